/* cmd_settings.c - sashing, on-point: blocks with sashes between them, and blocks standing on their corners.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

/* ---- sashing ---------------------------------------------------------------------------------------------------- */

struct sashing_request {
    struct muslin_setting_sashed_spec sashed;
    int32_t frame;
    int32_t cornerstones;
};

static void start_sashing(void *request)
{
    struct sashing_request *wanted = request;
    wanted->sashed = (struct muslin_setting_sashed_spec)MUSLIN_SETTING_SASHED_SPEC_INIT;
}

static const struct word sash_kind_words[] = {
    { "vertical sash", MUSLIN_SASH_VERTICAL }, { "horizontal sash", MUSLIN_SASH_HORIZONTAL },
    { "cornerstone", MUSLIN_SASH_CORNERSTONE }, { NULL, 0 }
};

static void put_sash_piece(json_t *list, const struct desk *desk, const struct muslin_sash_piece *row,
                           uint32_t *warnings)
{
    json_t *piece = append_object(list);
    put_text(piece, "kind", word_of(sash_kind_words, row->kind));
    put_count(piece, "count", row->pieces);
    put_length(piece, desk, "cut_width", row->cut_width);
    put_length(piece, desk, "cut_length", row->cut_length);
    put_count(piece, "from_each_strip", row->per_strip);
    put_count(piece, "strips", row->strips);
    put_count(piece, "spare_pieces", row->spare_pieces);
    put_count(piece, "joins", row->joins);
    put_cloth(piece, desk, "cloth_length", row->cloth_length);
    put_to_buy(piece, desk, "cloth_to_buy", row->cloth_length);
    put_spare(piece, desk, "cloth_may_be_narrower_by", row->narrower_by);
    *warnings |= row->warnings;
}

static json_t *answer_sashing(const void *request, struct desk *desk)
{
    const struct sashing_request *wanted = request;
    struct muslin_setting_sashed_spec spec = wanted->sashed;
    struct muslin_setting_sashed_plan top = { .size = sizeof top };
    struct muslin_sash_piece rows[3];
    size_t count = 0;
    uint32_t warnings = 0;
    if (!given(desk, "height"))
        spec.block_height = spec.block_width;
    if (!given(desk, "sash-between-rows"))
        spec.sash_height = spec.sash_width;
    spec.flags = (wanted->frame ? MUSLIN_SETTING_SASHED_FRAME : 0) |
                 (wanted->cornerstones ? MUSLIN_SETTING_SASHED_CORNERSTONES : 0);
    if (!worked(desk, muslin_setting_sashed(&spec, &top, &desk->problem)) ||
        !worked(desk, muslin_setting_sashed_pieces(&spec, rows, sizeof rows[0], 3, &count, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "blocks", top.blocks);
    put_length(answer, desk, "block_unfinished_width", top.block_unfinished_width);
    put_length(answer, desk, "block_unfinished_height", top.block_unfinished_height);
    put_length(answer, desk, "cloth_usable_width", spec.usable_width);
    json_t *list = put_list(answer, "pieces");
    for (size_t i = 0; i < count; i++)
        put_sash_piece(list, desk, &rows[i], &warnings);
    put_truth(answer, "cornerstones", wanted->cornerstones != 0);
    put_length(answer, desk, "finished_width", top.finished_width);
    put_length(answer, desk, "finished_length", top.finished_length);
    put_length(answer, desk, "unfinished_width", top.unfinished_width);
    put_length(answer, desk, "unfinished_length", top.unfinished_length);
    put_warnings(answer, warnings);
    return answer;
}

static const struct option_row sashing_options[] = {
    { "block", KIND_LENGTH, offsetof(struct sashing_request, sashed.block_width), MUSLIN_ARG_BLOCK_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished width of a block" },
    { "height", KIND_LENGTH, offsetof(struct sashing_request, sashed.block_height), MUSLIN_ARG_BLOCK_HEIGHT, 0, NULL,
      "finished height of a block (the same)" },
    { "columns", KIND_COUNT, offsetof(struct sashing_request, sashed.columns), MUSLIN_ARG_COLUMNS, OPTION_REQUIRED,
      NULL, "blocks across" },
    { "rows", KIND_COUNT, offsetof(struct sashing_request, sashed.rows), MUSLIN_ARG_QUILT_ROWS, OPTION_REQUIRED, NULL,
      "blocks down" },
    { "sash", KIND_LENGTH, offsetof(struct sashing_request, sashed.sash_width), MUSLIN_ARG_SASH_WIDTH, OPTION_REQUIRED,
      NULL, "finished width of the sashes" },
    { "sash-between-rows", KIND_LENGTH, offsetof(struct sashing_request, sashed.sash_height), MUSLIN_ARG_SASH_WIDTH, 0,
      NULL, "finished width of the horizontal ones, where it differs" },
    { "frame", KIND_SWITCH, offsetof(struct sashing_request, frame), MUSLIN_ARG_NONE, 0, NULL,
      "sashes all round the outside too" },
    { "cornerstones", KIND_SWITCH, offsetof(struct sashing_request, cornerstones), MUSLIN_ARG_NONE, 0, NULL,
      "squares where sashes cross; without them long sashes run between the rows" },
    OPTION_HEADING("Cloth and seams"),
    { "usable", KIND_LENGTH, offsetof(struct sashing_request, sashed.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the sash cloth (40 in)" },
    { "end-loss", KIND_LENGTH, offsetof(struct sashing_request, sashed.end_loss), MUSLIN_ARG_END_LOSS, 0, NULL,
      "what squaring its ends takes off each strip (none)" },
    OPTION_SEAM(sashing_request, sashed.allowance, sashed.take_up),
    OPTION_END
};

const struct command sashing_command = {
    .name = "sashing",
    .about = "sashes and cornerstones between blocks: counts, cut sizes, strips",
    .operands = "FINISHED-BLOCK",
    .examples = "  muslin sashing 12 --columns 4 --rows 5 --sash 4 --frame --cornerstones --usable 44\n"
                "  muslin sashing 9 --columns 5 --rows 6 --sash \"1 1/2\"",
    .options = sashing_options,
    .request_size = sizeof(struct sashing_request),
    .start = start_sashing,
    .answer = answer_sashing,
    .show = show_sashing
};

/* ---- on point --------------------------------------------------------------------------------------------------- */

enum factor { FACTOR_ROOT = 1, FACTOR_1414, FACTOR_141 };

struct point_request {
    struct muslin_setting_point_spec point;
    struct muslin_rounding_spec cutting;
    int32_t factor;
    int32_t diagonal_first;
};

static const struct word point_layout_words[] = { { "plain", MUSLIN_POINT_LAYOUT_PLAIN },
                                                  { "outer", MUSLIN_POINT_LAYOUT_SASH_OUTER },
                                                  { "cut", MUSLIN_POINT_LAYOUT_SASH_CUT },
                                                  { "inner", MUSLIN_POINT_LAYOUT_SASH_INNER },
                                                  { NULL, 0 } };
static const struct word point_edge_words[] = {
    { "triangles", MUSLIN_POINT_EDGE_TRIANGLES }, { "half-blocks", MUSLIN_POINT_EDGE_HALF_BLOCKS }, { NULL, 0 }
};
static const struct word policy_words[] = {
    { "exact", MUSLIN_ALLOWANCE_POLICY_EXACT }, { "customary", MUSLIN_ALLOWANCE_POLICY_CUSTOMARY },
    { "oversize", MUSLIN_ALLOWANCE_POLICY_OVERSIZE }, { NULL, 0 }
};
static const struct word factor_words[] = {
    { "root", FACTOR_ROOT }, { "1.414", FACTOR_1414 }, { "1.41", FACTOR_141 }, { NULL, 0 }
};

/* Customary sizes up to 1/8 in, as most charts have them. */
static void start_point(void *request)
{
    struct point_request *wanted = request;
    wanted->point = (struct muslin_setting_point_spec)MUSLIN_SETTING_POINT_SPEC_INIT;
    wanted->point.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    wanted->cutting = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
    wanted->cutting.grid = MUSLIN_TICKS_PER_INCH / 8;
    wanted->cutting.direction = MUSLIN_DIRECTION_UP;
    wanted->factor = FACTOR_ROOT;
}

/* What the words ask for; a sash without a layout goes all round, room to trim means oversize. */
static struct muslin_setting_point_spec point_spec(const struct point_request *wanted, const struct desk *desk)
{
    struct muslin_setting_point_spec spec = wanted->point;
    spec.flags = wanted->diagonal_first ? MUSLIN_SETTING_POINT_DIAGONAL_FIRST : 0;
    if (given(desk, "sash") && !given(desk, "layout"))
        spec.layout = MUSLIN_POINT_LAYOUT_SASH_OUTER;
    if (given(desk, "trim") && !given(desk, "policy"))
        spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    if (wanted->factor != FACTOR_ROOT) {
        spec.factor_numerator = wanted->factor == FACTOR_1414 ? 1414 : 141;
        spec.factor_denominator = wanted->factor == FACTOR_1414 ? 1000 : 100;
    }
    return spec;
}

/* What a square is larger than its exact need by, or smaller; the printed need and this make the square. What it leaves
 * to trim at the edge of the quilt is less. */
static void put_surplus(json_t *part, const struct desk *desk, muslin_len surplus, muslin_len room)
{
    muslin_len less = 0;
    if (surplus >= 0) {
        put_slack(part, desk, "larger_than_need_by", surplus);
        put_slack(part, desk, "to_trim_at_the_edge", room);
    } else if (muslin_length_subtract(0, surplus, &less) == MUSLIN_OK)
        put_least(part, desk, "smaller_than_need_by", less);
}

static void put_sides(json_t *answer, const struct desk *desk, const struct muslin_setting_point_plan *made)
{
    if (made->side_triangles == 0)
        return;
    json_t *sides = put_object(answer, "side_triangles");
    put_count(sides, "count", made->side_triangles);
    put_count(sides, "squares_cut_twice", made->side_squares);
    put_length(sides, desk, "square_cut", made->side_square_cut);
    put_least(sides, desk, "exact_need", made->side_need);
    put_surplus(sides, desk, made->side_surplus, made->side_room);
    put_count(sides, "spare_triangles", made->spare_side_triangles);
}

static void put_corners(json_t *answer, const struct desk *desk, const struct muslin_setting_point_plan *made)
{
    json_t *corners = put_object(answer, "corner_triangles");
    put_count(corners, "count", made->corner_triangles);
    put_count(corners, "squares_cut_once", made->corner_squares);
    put_length(corners, desk, "square_cut", made->corner_square_cut);
    put_least(corners, desk, "exact_need", made->corner_need);
    put_surplus(corners, desk, made->corner_surplus, made->corner_room);
}

static void put_sashes(json_t *answer, const struct desk *desk, const struct muslin_setting_point_plan *made)
{
    if (made->sash_cut_width == 0)
        return;
    json_t *sashes = put_object(answer, "sashes");
    put_count(sashes, "count", made->sashes);
    put_length(sashes, desk, "cut_width", made->sash_cut_width);
    put_length(sashes, desk, "cut_length", made->sash_cut_length);
    put_count(sashes, "at_the_edge", made->edge_sashes);
    if (made->edge_sashes > 0)
        put_length(sashes, desk, "edge_sash_cut_length", made->edge_sash_cut_length);
    put_count(sashes, "cornerstones", made->cornerstones);
    put_length(sashes, desk, "cornerstone_cut", made->cornerstone_cut);
    put_count(sashes, "edge_cornerstones", made->edge_cornerstones);
    if (made->edge_cornerstones > 0) {
        put_count(sashes, "edge_cornerstone_squares_cut_twice", made->edge_cornerstone_squares);
        json_t *squares = put_object(sashes, "edge_cornerstone_squares");
        put_length(squares, desk, "square_cut", made->edge_cornerstone_cut);
        put_least(squares, desk, "exact_need", made->edge_cornerstone_need);
        put_surplus(squares, desk, made->edge_cornerstone_surplus, made->edge_cornerstone_room);
    }
}

static json_t *point_as_json(struct desk *desk, const struct muslin_setting_point_spec *spec,
                             const struct muslin_setting_point_plan *made)
{
    muslin_len beyond = 0;
    if (!worked(desk, muslin_length_add(spec->set_off, spec->allowance, &beyond)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "block_finished", spec->block);
    put_length(answer, desk, "block_unfinished", made->alternate_cut);
    put_text(answer, "layout", word_of(point_layout_words, spec->layout));
    put_text(answer, "policy", word_of(policy_words, spec->policy));
    put_count(answer, "blocks", made->blocks);
    put_count(answer, "alternate_blocks", made->alternates);
    put_length(answer, desk, "alternate_cut", made->alternate_cut);
    put_sides(answer, desk, made);
    put_corners(answer, desk, made);
    put_count(answer, "half_blocks", made->half_blocks);
    put_length(answer, desk, "half_block_cut_beyond_diagonal", made->half_block_beyond);
    put_sashes(answer, desk, made);
    put_about(answer, desk, "block_diagonal_finished", made->diagonal);
    json_t *edges = put_object(answer, "edges");
    put_length(edges, desk, "set_off", spec->set_off);
    put_length(edges, desk, "trim_outside", beyond);
    put_about(answer, desk, "finished_width", made->finished_width);
    put_about(answer, desk, "finished_length", made->finished_length);
    put_about(answer, desk, "unfinished_width", made->unfinished_width);
    put_about(answer, desk, "unfinished_length", made->unfinished_length);
    put_warnings(answer, made->warnings);
    return answer;
}

static json_t *answer_point(const void *request, struct desk *desk)
{
    const struct point_request *wanted = request;
    const struct muslin_rounding_spec to_a_tick = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_setting_point_spec spec = point_spec(wanted, desk);
    struct muslin_setting_point_plan made = { .size = sizeof made };
    if (!worked(desk, muslin_setting_point(&spec, &wanted->cutting, &to_a_tick, &made, &desk->problem)))
        return NULL;
    return point_as_json(desk, &spec, &made);
}

static const struct option_row point_options[] = {
    { "block", KIND_LENGTH, offsetof(struct point_request, point.block), MUSLIN_ARG_BLOCK_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished side of a block" },
    { "columns", KIND_COUNT, offsetof(struct point_request, point.columns), MUSLIN_ARG_COLUMNS, OPTION_REQUIRED, NULL,
      "blocks across, without the alternate ones" },
    { "rows", KIND_COUNT, offsetof(struct point_request, point.rows), MUSLIN_ARG_QUILT_ROWS, OPTION_REQUIRED, NULL,
      "blocks down, without the alternate ones" },
    { "sash", KIND_LENGTH, offsetof(struct point_request, point.sash), MUSLIN_ARG_SASH_WIDTH, 0, NULL,
      "finished width of the sashes (none)" },
    { "layout", KIND_CHOICE, offsetof(struct point_request, point.layout), MUSLIN_ARG_SETTING_LAYOUT, 0,
      point_layout_words, "plain: no sashes; outer: sashes round every block; cut: the same, the edge through the "
      "middle of the outer cornerstones; inner: none outside the outer blocks (plain, with a sash outer)" },
    { "edge", KIND_CHOICE, offsetof(struct point_request, point.edge), MUSLIN_ARG_EDGE_STYLE, 0, point_edge_words,
      "triangles (the usual) or half-blocks" },
    { "set-off", KIND_LENGTH, offsetof(struct point_request, point.set_off), MUSLIN_ARG_SET_OFF, 0, NULL,
      "how far the blocks float inside the edge; it stays in the quilt (none)" },
    OPTION_HEADING("Squares for the triangles"),
    { "policy", KIND_CHOICE, offsetof(struct point_request, point.policy), MUSLIN_ARG_POLICY, 0, policy_words,
      "customary (the usual): 1 1/4 in and 7/8 in added for a 1/4 in seam; exact: what geometry needs; oversize: "
      "customary and room to trim" },
    { "trim", KIND_LENGTH, offsetof(struct point_request, point.trim_room), MUSLIN_ARG_TRIM_ROOM, 0, NULL,
      "added to each square (none); half of it stands out at the edge, to be trimmed away after sewing" },
    { "factor", KIND_CHOICE, offsetof(struct point_request, factor), MUSLIN_ARG_FACTOR, 0, factor_words,
      "diagonal of a square by root (the usual), 1.414 or 1.41" },
    { "diagonal-first", KIND_SWITCH, offsetof(struct point_request, diagonal_first), MUSLIN_ARG_NONE, 0, NULL,
      "round the diagonal, then add" },
    { "side-add", KIND_LENGTH, offsetof(struct point_request, point.side_addition), MUSLIN_ARG_EXTRA, 0, NULL,
      "customary addition to squares cut twice (five seam allowances)" },
    { "corner-add", KIND_LENGTH, offsetof(struct point_request, point.corner_addition), MUSLIN_ARG_EXTRA, 0, NULL,
      "customary addition to squares cut once (three and a half)" },
    { "to", KIND_LENGTH, offsetof(struct point_request, cutting.grid), MUSLIN_ARG_GRID, 0, NULL,
      "grid of the sizes to cut (1/8 in)" },
    { "round", KIND_CHOICE, offsetof(struct point_request, cutting.direction), MUSLIN_ARG_DIRECTION, 0, rounding_words,
      "up (the usual), down or nearest" },
    { "tolerance", KIND_LENGTH, offsetof(struct point_request, cutting.tolerance), MUSLIN_ARG_TOLERANCE, 0, NULL,
      "what rounding up or down may overlook (none)" },
    OPTION_HEADING("Seams"),
    OPTION_SEAM(point_request, point.allowance, point.take_up),
    OPTION_END
};

const struct command on_point_command = {
    .name = "on-point",
    .about = "blocks set on point: setting triangles, sashes, size of the centre",
    .operands = "FINISHED-BLOCK",
    .examples = "  muslin on-point 6 --columns 4 --rows 4\n"
                "  muslin on-point 12 --columns 3 --rows 5 --set-off 1 --trim 1/2\n"
                "  muslin on-point 8 --columns 3 --rows 3 --sash 2 --layout cut --policy exact",
    .options = point_options,
    .request_size = sizeof(struct point_request),
    .start = start_point,
    .answer = answer_point,
    .show = show_on_point
};
