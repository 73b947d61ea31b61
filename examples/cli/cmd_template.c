/* cmd_template.c - template: a unit of one's own shape, drawn by its corners; its pieces as cut.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "answer.h"
#include "cmd.h"
#include "drawing.h"
#include "memory.h"
#include "sheet.h"
#include "words.h"

static const struct word corner_tip_words[] = {
    { "sharp", MUSLIN_CORNER_TIP_SHARP }, { "blunt", MUSLIN_CORNER_TIP_BLUNT }, { NULL, 0 }
};

struct template_request {
    const char *outline; /* null: none */
    struct texts pieces;
    muslin_len allowance;
    muslin_len take_up;
    muslin_len margin;
    int32_t tip;
    int32_t foundation;
    struct muslin_rounding_spec rounding;
};

static void start_template(void *request)
{
    struct template_request *wanted = request;
    const struct muslin_corner_spec usual = MUSLIN_CORNER_SPEC_INIT;
    wanted->allowance = usual.allowance;
    wanted->tip = MUSLIN_CORNER_TIP_SHARP;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

static bool read_drawing(struct desk *desk, const struct template_request *wanted, struct drawing *drawing)
{
    struct muslin_corner_spec model = MUSLIN_CORNER_SPEC_INIT;
    model.allowance = wanted->allowance;
    model.take_up = wanted->take_up;
    model.tip = wanted->tip;
    if (wanted->outline != NULL && !read_shape(desk, wanted->outline, OUTLINE, &model, drawing))
        return false;
    for (size_t i = 0; i < wanted->pieces.count; i++)
        if (!read_shape(desk, wanted->pieces.texts[i], i + 1, &model, drawing))
            return false;
    drawing->pieces = wanted->pieces.count;
    return true;
}

/* ---- the answer ------------------------------------------------------------------------------------------------- */

static bool put_outline(json_t *answer, struct desk *desk, const struct drawing *drawing)
{
    struct muslin_shape shape = { .size = sizeof shape };
    put_count(answer, "piece_count", (int64_t)drawing->pieces);
    json_object_set_new(answer, "outline_is_filled", json_null()); /* nobody knows */
    if (corners_of(drawing, OUTLINE) == 0)
        return true;
    if (!worked_on(desk, drawing, muslin_shape_check(ROWS_OF(drawing), &shape, &desk->problem)))
        return false;
    put_truth(answer, "outline_is_filled", true);
    put_length(answer, desk, "finished_width", shape.finished_width);
    put_length(answer, desk, "finished_height", shape.finished_height);
    put_count(answer, "outside_edges", shape.outside_edges);
    put_count(answer, "inside_edges", shape.inside_edges);
    return true;
}

static void put_corner(json_t *list, const struct desk *desk, const struct drawing *drawing,
                       const struct muslin_template_corner *corner)
{
    json_t *one = append_object(list);
    const struct muslin_corner_spec *finished = &drawing->rows[corner->corner];
    put_count(one, "corner", (int64_t)place_of(drawing, corner->corner).corner);
    put_length(one, desk, "finished_x", finished->x);
    put_length(one, desk, "finished_y", finished->y);
    put_length(one, desk, "cut_x", corner->x);
    put_length(one, desk, "cut_y", corner->y);
    put_text(one, "edge", corner->has_seam ? word_of(curve_words, corner->curve) : "across the tip");
    if (corner->curve == MUSLIN_CURVE_STRAIGHT)
        return;
    put_length(one, desk, "centre_x", corner->centre_x);
    put_length(one, desk, "centre_y", corner->centre_y);
    put_length(one, desk, "cut_radius", corner->radius);
}

/* A corner gives two rows at most. */
static bool put_corners(json_t *one, struct desk *desk, const struct template_request *wanted,
                        const struct drawing *drawing, size_t shape)
{
    size_t capacity = 2 * corners_of(drawing, shape);
    struct muslin_template_corner *rows = need_memory(capacity * sizeof *rows);
    size_t count = 0;
    bool fine = worked_on(desk, drawing,
                          muslin_shape_template(ROWS_OF(drawing), (int32_t)shape - 1, &wanted->rounding, rows,
                                                sizeof *rows, capacity, &count, &desk->problem));
    json_t *list = put_list(one, "corners");
    for (size_t i = 0; fine && i < count; i++)
        put_corner(list, desk, drawing, &rows[i]);
    free(rows);
    return fine;
}

static void put_edge(json_t *one, const struct drawing *drawing, int32_t row)
{
    struct place place = place_of(drawing, row);
    put_count(one, "from_corner", (int64_t)place.corner);
    put_count(one, "to_corner", (int64_t)place.next);
}

static bool put_measures(json_t *one, struct desk *desk, const struct template_request *wanted,
                         const struct drawing *drawing, size_t shape)
{
    struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    struct muslin_shape_piece piece = { .size = sizeof piece };
    spec.piece = (int32_t)shape - 1;
    spec.margin = wanted->margin;
    if (!worked_on(desk, drawing, muslin_shape_measure(ROWS_OF(drawing), &spec, &wanted->rounding, &piece,
                                                       &desk->problem)))
        return false;
    put_least(one, desk, "cut_width", piece.cut_width);
    put_least(one, desk, "cut_height", piece.cut_height);
    json_t *grain = put_object(one, "straight_grain");
    if (piece.grain_corner >= 0)
        put_edge(grain, drawing, piece.grain_corner);
    put_least(one, desk, "rectangle_cut_along_the_grain", piece.rectangle_along);
    put_least(one, desk, "rectangle_cut_across_the_grain", piece.rectangle_across);
    put_count(one, "outside_edges", piece.outside_edges);
    put_count(one, "bias_edges", piece.bias_edges);
    json_t *areas = put_object(one, "areas_of_the_corners_in_doubled_square_ticks");
    put_count(areas, "finished", piece.finished_area);
    put_count(areas, "cut", piece.cut_area);
    put_warnings(one, piece.warnings);
    return true;
}

/* The rectangle for each straight edge that may lie along the sewing line. */
static bool put_foundation(json_t *one, struct desk *desk, const struct template_request *wanted,
                           const struct drawing *drawing, size_t shape)
{
    json_t *list = put_list(one, "foundation");
    for (size_t row = drawing->start[shape]; row < drawing->start[shape + 1]; row++) {
        muslin_len along, across;
        if (drawing->rows[row].curve != MUSLIN_CURVE_STRAIGHT)
            continue;
        if (!worked_on(desk, drawing, muslin_shape_foundation(ROWS_OF(drawing), (int32_t)row, wanted->margin,
                                                              &wanted->rounding, &along, &across, &desk->problem)))
            return false;
        json_t *edge = append_object(list);
        put_edge(edge, drawing, (int32_t)row);
        put_least(edge, desk, "rectangle_cut_along_the_edge", along);
        put_least(edge, desk, "rectangle_cut_across_the_edge", across);
    }
    return true;
}

static bool put_template(json_t *answer, struct desk *desk, const struct template_request *wanted,
                         struct drawing *drawing)
{
    if (!read_drawing(desk, wanted, drawing) || !put_outline(answer, desk, drawing))
        return false;
    put_length(answer, desk, "seam_allowance", wanted->allowance);
    put_length(answer, desk, "margin", wanted->margin);
    put_text(answer, "tip", word_of(corner_tip_words, wanted->tip));
    json_t *list = put_list(answer, "pieces");
    for (size_t shape = 1; shape <= drawing->pieces; shape++) {
        json_t *one = append_object(list);
        put_count(one, "piece", (int64_t)shape);
        if (!put_corners(one, desk, wanted, drawing, shape) || !put_measures(one, desk, wanted, drawing, shape) ||
            (wanted->foundation && !put_foundation(one, desk, wanted, drawing, shape)))
            return false;
    }
    return true;
}

static json_t *answer_template(const void *request, struct desk *desk)
{
    struct drawing drawing = { .n = 0 };
    drawing.rows = need_memory(MUSLIN_SHAPE_CORNERS_MAX * sizeof *drawing.rows);
    json_t *answer = json_object();
    if (!put_template(answer, desk, request, &drawing)) {
        json_decref(answer);
        answer = NULL;
    }
    free(drawing.rows);
    return answer;
}

static const struct option_row template_options[] = {
    { "piece", KIND_TEXTS, offsetof(struct template_request, pieces), 0, OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "corners of a finished piece, counter-clockwise, a comma between them (a semicolon with --decimal-comma); each "
      "how far right and how far up. Where an arc starts, behind its corner: convex (it bulges out of the piece) or "
      "concave, how far right and up its centre is, and its radius. May be repeated" },
    { "outline", KIND_TEXT, offsetof(struct template_request, outline), 0, 0, NULL,
      "corners of the finished unit, written like a piece: the pieces must fill it (without: not checked)" },
    { "tip", KIND_CHOICE, offsetof(struct template_request, tip), MUSLIN_ARG_CORNER_TIP, 0, corner_tip_words,
      "cut corners below a right angle between straight edges: sharp (the usual) or blunt, cut off where the allowance "
      "of the other edge ends" },
    OPTION_HEADING("Rectangles"),
    { "margin", KIND_LENGTH, offsetof(struct template_request, margin), MUSLIN_ARG_MARGIN, 0, NULL,
      "added all round the rectangles that hold the pieces (none)" },
    { "foundation", KIND_SWITCH, offsetof(struct template_request, foundation), 0, 0, NULL,
      "for sewing onto a foundation: the rectangle for each edge that may lie along the sewing line" },
    OPTION_HEADING("Seams and rounding"),
    OPTION_SEAM(template_request, allowance, take_up),
    OPTION_ROUNDING(template_request, rounding),
    OPTION_END
};

const struct command template_command = {
    .name = "template",
    .about = "templates for a unit of your own shape, drawn by its corners",
    .operands = "PIECE...",
    .examples = "  muslin template --outline \"0 0, 3 0, 3 3, 0 3\" \"0 0, 3 0, 3 3\" \\\n"
                "    \"0 0, 3 3, 0 3\" --to 1/8\n"
                "  muslin template \"0 0, 5 0 convex 0 0 5, 0 5\" --units decimal\n"
                "  muslin template \"0 0, 6 0, 2 1/2 4\" --foundation --margin 1/2\n"
                "\n"
                "The second one is a quarter disc: its arc starts at the second corner, about the centre 0 0 with a "
                "radius of 5.",
    .options = template_options,
    .request_size = sizeof(struct template_request),
    .start = start_template,
    .answer = answer_template,
    .show = show_template_answer
};
