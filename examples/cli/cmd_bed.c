/* cmd_bed.c - bed, cover, across, triangles: a quilt for a bed, a quilt on a bed, and how many fit a size.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

static const struct word drop_words[] = {
    { "depth", MUSLIN_DROP_DEPTH }, { "over-joint", MUSLIN_DROP_OVER_JOINT }, { "floor", MUSLIN_DROP_FLOOR },
    { NULL, 0 }
};
static const struct word corner_words[] = {
    { "square", MUSLIN_FOOT_CORNER_SQUARE }, { "rounded", MUSLIN_FOOT_CORNER_ROUNDED }, { NULL, 0 }
};

/* How far the foot corners hang, and what that leaves to the floor; said only where the height of the bed is known. */
static bool put_corner(json_t *answer, struct desk *desk, muslin_len hang, muslin_len floor_height, bool touches)
{
    muslin_len difference = 0;
    put_about(answer, desk, "corner_hangs", hang);
    put_truth(answer, "corner_touches_floor", touches);
    if (floor_height == 0)
        return true;
    if (!worked(desk, touches ? muslin_length_subtract(hang, floor_height, &difference)
                              : muslin_length_subtract(floor_height, hang, &difference)))
        return false;
    put_about(answer, desk, touches ? "corner_lies_on_floor" : "corner_above_floor", difference);
    return true;
}

/* ---- a quilt for a bed ------------------------------------------------------------------------------------------ */

struct bed_request {
    struct muslin_bed_spec bed;
    struct muslin_seam_spec seam;
};

static void start_bed(void *request)
{
    struct bed_request *wanted = request;
    wanted->bed = (struct muslin_bed_spec)MUSLIN_BED_SPEC_INIT;
    wanted->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
}

static struct muslin_bed_spec bed_wanted(const struct bed_request *wanted, const struct desk *desk)
{
    struct muslin_bed_spec spec = wanted->bed;
    if (given(desk, "drop")) {
        spec.drop = MUSLIN_DROP_GIVEN;
        spec.foot_drop = given(desk, "foot") ? spec.foot_drop : spec.side_drop;
    }
    if (given(desk, "foot"))
        spec.flags = MUSLIN_BED_FOOT_GIVEN;
    return spec;
}

/* The top to piece, finished and with the seam that will go round it. */
static bool put_top(json_t *answer, struct desk *desk, const struct muslin_bed *bed,
                    const struct muslin_seam_spec *seam)
{
    const muslin_len finished[] = { bed->top_width, bed->top_length };
    muslin_len unfinished[2];
    for (int i = 0; i < 2; i++)
        if (!worked(desk, muslin_seam_cut_from_finished(finished[i], seam, &unfinished[i], &desk->problem)))
            return false;
    put_length(answer, desk, "top_finished_width", finished[0]);
    put_length(answer, desk, "top_finished_length", finished[1]);
    put_length(answer, desk, "top_unfinished_width", unfinished[0]);
    put_length(answer, desk, "top_unfinished_length", unfinished[1]);
    put_length(answer, desk, "seam_allowance", seam->allowance);
    return true;
}

static json_t *answer_bed(const void *request, struct desk *desk)
{
    const struct bed_request *wanted = request;
    struct muslin_bed_spec spec = bed_wanted(wanted, desk);
    struct muslin_bed bed = { .size = sizeof bed };
    if (!worked(desk, muslin_bed_size(&spec, &bed, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "mattress_width", spec.mattress_width);
    put_length(answer, desk, "mattress_length", spec.mattress_length);
    put_text(answer, "drop_rule", spec.drop == MUSLIN_DROP_GIVEN ? "given" : word_of(drop_words, spec.drop));
    put_length(answer, desk, "side_drop", bed.side_drop);
    put_length(answer, desk, "foot_drop", bed.foot_drop);
    put_length(answer, desk, "head_drop", spec.head_drop);
    put_length(answer, desk, "pillow_tuck", spec.pillow_tuck);
    put_length(answer, desk, "finished_width", bed.finished_width);
    put_length(answer, desk, "finished_length", bed.finished_length);
    put_length(answer, desk, "quilting_takes_up", spec.quilting_extra);
    put_text(answer, "foot_corner", word_of(corner_words, spec.foot_corner));
    if (!put_top(answer, desk, &bed, &wanted->seam) ||
        !put_corner(answer, desk, bed.corner_hang, spec.floor_height, bed.corner_touches == 1)) {
        json_decref(answer);
        return NULL;
    }
    if (spec.foot_corner == MUSLIN_FOOT_CORNER_ROUNDED) {
        put_length(answer, desk, "corner_radius", bed.corner_radius);
        put_about(answer, desk, "corner_cut_off", bed.corner_cut_off);
    }
    put_warnings(answer, bed.warnings);
    return answer;
}

#define OPTION_MATTRESS(request, spec_) \
    { "width", KIND_LENGTH, offsetof(struct request, spec_.mattress_width), MUSLIN_ARG_MATTRESS_WIDTH, \
      OPTION_REQUIRED, NULL, "width of the mattress, measured on the bed" }, \
    { "length", KIND_LENGTH, offsetof(struct request, spec_.mattress_length), MUSLIN_ARG_MATTRESS_LENGTH, \
      OPTION_REQUIRED, NULL, "its length" }, \
    { "depth", KIND_LENGTH, offsetof(struct request, spec_.mattress_depth), MUSLIN_ARG_MATTRESS_DEPTH, 0, NULL, \
      "its depth, with what lies on it" }, \
    { "height", KIND_LENGTH, offsetof(struct request, spec_.floor_height), MUSLIN_ARG_FLOOR_HEIGHT, 0, NULL, \
      "from the floor to the top of the mattress" }

#define OPTION_ENDS(request, spec_) \
    { "tuck", KIND_LENGTH, offsetof(struct request, spec_.pillow_tuck), MUSLIN_ARG_PILLOW_TUCK, 0, NULL, \
      "to fold under and over the pillows: 10, 12 or 15 in (none)" }, \
    { "head", KIND_LENGTH, offsetof(struct request, spec_.head_drop), MUSLIN_ARG_DROP, 0, NULL, \
      "what hangs over at the head (none)" }, \
    { "corner", KIND_CHOICE, offsetof(struct request, spec_.foot_corner), MUSLIN_ARG_FOOT_CORNER, 0, corner_words, \
      "corners at the foot: square (the usual) or rounded" }

static const struct option_row bed_options[] = {
    OPTION_HEADING("The bed"),
    OPTION_MATTRESS(bed_request, bed),
    OPTION_HEADING("How far the quilt hangs"),
    { "rule", KIND_CHOICE, offsetof(struct bed_request, bed.drop), MUSLIN_ARG_DROP_RULE, 0, drop_words,
      "depth: as deep as the mattress (the usual); over-joint: deeper, to hide where mattress and base meet; floor" },
    { "beyond", KIND_LENGTH, offsetof(struct bed_request, bed.beyond_depth), MUSLIN_ARG_EXTRA, 0, NULL,
      "how much deeper over-joint is (3 in)" },
    { "drop", KIND_LENGTH, offsetof(struct bed_request, bed.side_drop), MUSLIN_ARG_DROP, 0, NULL,
      "a drop of your own instead of a rule, on both sides and at the foot" },
    { "foot", KIND_LENGTH, offsetof(struct bed_request, bed.foot_drop), MUSLIN_ARG_DROP, 0, NULL,
      "another drop at the foot: 0 for a bed with a footboard" },
    OPTION_ENDS(bed_request, bed),
    { "quilting", KIND_LENGTH, offsetof(struct bed_request, bed.quilting_extra), MUSLIN_ARG_EXTRA, 0, NULL,
      "what quilting will take up of width and length: 1 to 3 in or more (none)" },
    OPTION_HEADING("The seam round the top, for its unfinished size"),
    OPTION_SEAM(bed_request, seam.allowance, seam.take_up),
    OPTION_END
};

const struct command bed_command = {
    .name = "bed",
    .about = "size of a quilt for a mattress, and how its corners hang",
    .operands = "",
    .examples = "  muslin bed --width 60 --length 80 --depth 12 --tuck 10\n"
                "  muslin bed --width 60 --length 80 --drop 16 --height 22 --corner rounded",
    .options = bed_options,
    .request_size = sizeof(struct bed_request),
    .start = start_bed,
    .answer = answer_bed,
    .lead = "A quilt {finished_width} by {finished_length} finished, after quilting and washing, for a mattress "
            "{mattress_width} by {mattress_length}.",
    .show = show_bed
};

/* ---- a quilt on a bed ------------------------------------------------------------------------------------------- */

struct cover_request {
    struct muslin_bed_covered_spec cover;
};

static void start_cover(void *request)
{
    struct cover_request *wanted = request;
    wanted->cover = (struct muslin_bed_covered_spec)MUSLIN_BED_COVERED_SPEC_INIT;
}

/* What hangs below the mattress, and what is missing at its edges. */
static void put_beyond(json_t *answer, const struct desk *desk, const struct muslin_bed_covered_spec *spec,
                       const struct muslin_bed_cover *cover)
{
    if (spec->mattress_depth > 0) {
        put_slack(answer, desk, "beyond_the_depth_at_the_sides", cover->beyond_side);
        put_length(answer, desk, "beyond_the_depth_at_the_foot", cover->beyond_foot);
    }
    if (cover->side_drop < 0)
        put_least(answer, desk, "missing_on_each_side", -cover->side_drop);
    if (cover->foot_drop < 0)
        put_length(answer, desk, "missing_at_the_foot", -cover->foot_drop);
}

static json_t *answer_cover(const void *request, struct desk *desk)
{
    const struct cover_request *wanted = request;
    const struct muslin_bed_covered_spec *spec = &wanted->cover;
    struct muslin_bed_cover cover = { .size = sizeof cover };
    if (!worked(desk, muslin_bed_covered(spec, &cover, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "quilt_finished_width", spec->quilt_width);
    put_length(answer, desk, "quilt_finished_length", spec->quilt_length);
    put_length(answer, desk, "mattress_width", spec->mattress_width);
    put_length(answer, desk, "mattress_length", spec->mattress_length);
    put_truth(answer, "depth_known", spec->mattress_depth > 0);
    put_length(answer, desk, "pillow_tuck", spec->pillow_tuck);
    put_slack(answer, desk, "side_drop", cover.side_drop);
    put_length(answer, desk, "foot_drop", cover.foot_drop);
    put_truth(answer, "reaches_edges", cover.reaches_edges == 1);
    put_truth(answer, "reaches_depth", cover.reaches_depth == 1);
    put_beyond(answer, desk, spec, &cover);
    put_length(answer, desk, "short_in_width", cover.short_width);
    put_length(answer, desk, "short_in_length", cover.short_length);
    if (!put_corner(answer, desk, cover.corner_hang, spec->floor_height, cover.corner_touches == 1)) {
        json_decref(answer);
        return NULL;
    }
    put_warnings(answer, cover.warnings);
    return answer;
}

static const struct option_row cover_options[] = {
    OPTION_HEADING("The quilt, finished"),
    { "quilt-width", KIND_LENGTH, offsetof(struct cover_request, cover.quilt_width), MUSLIN_ARG_QUILT_WIDTH,
      OPTION_REQUIRED, NULL, "finished width of the quilt" },
    { "quilt-length", KIND_LENGTH, offsetof(struct cover_request, cover.quilt_length), MUSLIN_ARG_QUILT_LENGTH,
      OPTION_REQUIRED, NULL, "finished length of the quilt" },
    OPTION_ENDS(cover_request, cover),
    OPTION_HEADING("The bed"),
    OPTION_MATTRESS(cover_request, cover),
    OPTION_END
};

const struct command cover_command = {
    .name = "cover",
    .about = "how a quilt you have lies on a mattress, and what it falls short by",
    .operands = "",
    .examples = "  muslin cover --quilt-width 84 --quilt-length 92 --width 60 --length 80 --depth 12",
    .options = cover_options,
    .request_size = sizeof(struct cover_request),
    .start = start_cover,
    .answer = answer_cover,
    .lead = "A quilt {quilt_finished_width} by {quilt_finished_length} finished, on a mattress {mattress_width} by "
            "{mattress_length}.",
    .show = show_cover
};

/* ---- blocks across a width -------------------------------------------------------------------------------------- */

struct across_request {
    struct muslin_fit_across_spec across;
    int32_t framed;
};

static void start_across(void *request)
{
    struct across_request *wanted = request;
    wanted->across = (struct muslin_fit_across_spec)MUSLIN_FIT_ACROSS_SPEC_INIT;
}

static json_t *answer_across(const void *request, struct desk *desk)
{
    const struct across_request *wanted = request;
    struct muslin_fit_across_spec spec = wanted->across;
    struct muslin_fit_across_blocks across = { .size = sizeof across };
    spec.flags = wanted->framed ? MUSLIN_FIT_ACROSS_FRAME : 0;
    if (!worked(desk, muslin_fit_across(&spec, &across, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "blocks", across.blocks);
    put_length(answer, desk, "finished_block", spec.block);
    put_length(answer, desk, "finished_sash", spec.sash);
    put_truth(answer, "sash_at_both_ends", wanted->framed != 0);
    put_length(answer, desk, "finished_border_on_each_side", spec.border);
    put_length(answer, desk, "finished_width", across.finished_width);
    put_length(answer, desk, "wanted_width", spec.wanted);
    put_off_by(answer, desk, "wider_than_wanted_by", "off_by", across.off);
    put_truth(answer, "exactly_as_wanted", across.exact == 1);
    return answer;
}

static const struct option_row across_options[] = {
    { "wanted", KIND_LENGTH, offsetof(struct across_request, across.wanted), MUSLIN_ARG_QUILT_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished width (or length) to fill, with borders" },
    { "block", KIND_LENGTH, offsetof(struct across_request, across.block), MUSLIN_ARG_BLOCK_WIDTH, OPTION_REQUIRED,
      NULL, "finished width of a block" },
    { "sash", KIND_LENGTH, offsetof(struct across_request, across.sash), MUSLIN_ARG_SASH_WIDTH, 0, NULL,
      "finished width of the sash between blocks (none)" },
    { "framed", KIND_SWITCH, offsetof(struct across_request, framed), 0, 0, NULL, "a sash at both ends too" },
    { "border", KIND_LENGTH, offsetof(struct across_request, across.border), MUSLIN_ARG_BORDER_WIDTH, 0, NULL,
      "finished width of the border on each side (none)" },
    { "round", KIND_CHOICE, offsetof(struct across_request, across.direction), MUSLIN_ARG_DIRECTION, 0, rounding_words,
      "up, down or nearest (the usual)" },
    OPTION_END
};

const struct command across_command = {
    .name = "across",
    .about = "how many blocks fit a width, with sashes and borders",
    .operands = "WANTED",
    .examples = "  muslin across 88 --block 12 --sash 2 --border 4",
    .options = across_options,
    .request_size = sizeof(struct across_request),
    .start = start_across,
    .answer = answer_across,
    .lead = "{blocks:block} of {finished_block} come out {finished_width} wide, finished.",
    .show = show_across
};

/* ---- rows of triangles ------------------------------------------------------------------------------------------ */

struct triangles_request {
    struct muslin_fit_triangles_spec rows;
    muslin_len usable_width;
};

static void start_triangles(void *request)
{
    struct triangles_request *wanted = request;
    wanted->rows = (struct muslin_fit_triangles_spec)MUSLIN_FIT_TRIANGLES_SPEC_INIT;
    wanted->usable_width = MUSLIN_USABLE_WIDTH_USUAL;
}

/* Point up and point down in turn, with sharp tips, the first triangle takes its base of a strip and each further one
 * half of that: as many as halves of a base lie in the strip, when one of them is lost at its end. */
static bool count_wholes(struct desk *desk, const struct muslin_fit_triangle_rows *rows,
                         struct muslin_strips_spec *spec, struct muslin_strips *strips)
{
    struct muslin_rounding_spec up = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded half = { .size = sizeof half };
    up.direction = MUSLIN_DIRECTION_UP;
    if (!worked(desk, muslin_length_divide(rows->cut_base, 2, &up, &half)))
        return false;
    spec->pieces = rows->triangles;
    spec->piece_across = half.value;
    spec->end_loss = half.value;
    return worked(desk, muslin_fabric_strips(spec, strips, &desk->problem));
}

/* Strips with sharp tips, and the cloth for them. Each half triangle is given a rectangle of its own, more than it
 * takes. */
static bool put_triangle_strips(json_t *answer, struct desk *desk, muslin_len usable_width,
                                const struct muslin_fit_triangle_rows *rows)
{
    struct muslin_strips_spec spec = MUSLIN_STRIPS_SPEC_INIT;
    struct muslin_strips wholes = { .size = sizeof wholes };
    struct muslin_strips halves = { .size = sizeof halves };
    muslin_len length = 0;
    spec.strip_cut = rows->strip_cut;
    spec.usable_width = usable_width;
    if (!count_wholes(desk, rows, &spec, &wholes))
        return false;
    spec.pieces = rows->half_triangles;
    spec.piece_across = rows->half_cut_base;
    spec.end_loss = 0;
    if (!worked(desk, muslin_fabric_strips(&spec, &halves, &desk->problem)) ||
        !worked(desk, muslin_length_add(wholes.length, halves.length, &length)))
        return false;
    put_length(answer, desk, "usable_width", usable_width);
    put_count(answer, "whole_triangles_from_each_strip", wholes.per_strip);
    put_count(answer, "strips_for_whole_triangles", wholes.strips);
    put_count(answer, "half_triangles_from_each_strip", halves.per_strip);
    put_count(answer, "strips_for_half_triangles", halves.strips);
    put_cloth(answer, desk, "cloth_for_the_strips", length);
    put_shop_length(answer, desk, length);
    return true;
}

/* Strips are cut to the size itself where a ruler shows it, else to the next mark up. */
static void put_triangle_cuts(json_t *answer, const struct desk *desk, const struct muslin_fit_triangles_spec *spec,
                              const struct muslin_fit_triangle_rows *rows)
{
    put_length(answer, desk, "seam_allowance", spec->allowance);
    put_length(answer, desk, "take_up", spec->take_up);
    put_on_mark(answer, desk, "strip_cut_for_sharp_tips", rows->strip_cut, MUSLIN_DIRECTION_UP, 16, 10);
    put_on_mark(answer, desk, "strip_cut_for_blunt_tips", rows->strip_cut_blunt, MUSLIN_DIRECTION_UP, 16, 10);
    put_on_mark(answer, desk, "cut_base_of_a_triangle", rows->cut_base, MUSLIN_DIRECTION_NEAREST, 64, 5);
    put_on_mark(answer, desk, "cut_base_of_a_half_triangle", rows->half_cut_base, MUSLIN_DIRECTION_UP, 8, 50);
}

static json_t *answer_triangles(const void *request, struct desk *desk)
{
    const struct triangles_request *wanted = request;
    struct muslin_fit_triangle_rows rows = { .size = sizeof rows };
    if (!worked(desk, muslin_fit_triangles(&wanted->rows, &rows, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "rows", rows.rows);
    put_count(answer, "sides_across", rows.sides);
    put_length(answer, desk, "finished_height_of_a_row", wanted->rows.height);
    put_on_mark(answer, desk, "finished_side_of_a_triangle", rows.side, MUSLIN_DIRECTION_NEAREST, 64, 5);
    put_about(answer, desk, "finished_width", rows.finished_width);
    put_about(answer, desk, "finished_length", rows.finished_length);
    put_about(answer, desk, "unfinished_width", rows.unfinished_width);
    put_about(answer, desk, "unfinished_length", rows.unfinished_length);
    put_off_by(answer, desk, "wider_than_wanted_by", "width_off_by", rows.off_width);
    put_off_by(answer, desk, "longer_than_wanted_by", "length_off_by", rows.off_length);
    put_count(answer, "whole_triangles", rows.triangles);
    put_count(answer, "half_triangles_at_the_ends", rows.half_triangles);
    put_count(answer, "half_triangles_of_each_hand", rows.halves_each_hand);
    put_triangle_cuts(answer, desk, &wanted->rows, &rows);
    if (put_triangle_strips(answer, desk, wanted->usable_width, &rows))
        return answer;
    json_decref(answer);
    return NULL;
}

static const struct option_row triangles_options[] = {
    { "width", KIND_LENGTH, offsetof(struct triangles_request, rows.wanted_width), MUSLIN_ARG_QUILT_WIDTH,
      OPTION_REQUIRED, NULL, "finished width wanted, about" },
    { "length", KIND_LENGTH, offsetof(struct triangles_request, rows.wanted_length), MUSLIN_ARG_QUILT_LENGTH,
      OPTION_REQUIRED, NULL, "finished length wanted, about" },
    { "height", KIND_LENGTH, offsetof(struct triangles_request, rows.height), MUSLIN_ARG_TRIANGLE_HEIGHT,
      OPTION_REQUIRED, NULL, "finished height of a triangle, which is the depth of a row" },
    { "round-rows", KIND_CHOICE, offsetof(struct triangles_request, rows.rows_direction), MUSLIN_ARG_DIRECTION, 0,
      rounding_words, "rows: up, down or nearest (the usual)" },
    { "round-sides", KIND_CHOICE, offsetof(struct triangles_request, rows.sides_direction), MUSLIN_ARG_DIRECTION, 0,
      rounding_words, "sides across: up, down or nearest (the usual)" },
    { "usable", KIND_LENGTH, offsetof(struct triangles_request, usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the cloth, for strips and cloth (40 in)" },
    OPTION_SEAM(triangles_request, rows.allowance, rows.take_up),
    OPTION_END
};

const struct command triangles_command = {
    .name = "triangles",
    .about = "rows of equilateral triangles for a quilt of about a size",
    .operands = "",
    .examples = "  muslin triangles --width 40 --length 50 --height \"4 1/4\"",
    .options = triangles_options,
    .request_size = sizeof(struct triangles_request),
    .start = start_triangles,
    .answer = answer_triangles,
    .lead = "{rows:row} of triangles, {sides_across:side} across: {finished_width} by {finished_length} finished, "
            "{unfinished_width} by {unfinished_length} unfinished.",
    .show = show_triangle_rows
};
