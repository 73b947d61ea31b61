/* cmd_shape.c - curve, polygon: quarter circles and regular polygons, finished and cut.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

/* ---- curve ------------------------------------------------------------------------------------------------------ */

struct curve_request {
    struct muslin_quarter_circle_spec quarter;
    struct muslin_rounding_spec rounding;
};

static void start_curve(void *request)
{
    struct curve_request *wanted = request;
    wanted->quarter = (struct muslin_quarter_circle_spec)MUSLIN_QUARTER_CIRCLE_SPEC_INIT;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

static json_t *answer_curve(const void *request, struct desk *desk)
{
    const struct curve_request *wanted = request;
    struct muslin_quarter_circle made = { .size = sizeof made };
    if (!worked(desk, muslin_shape_quarter_circle(&wanted->quarter, &wanted->rounding, &made, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "finished_square", wanted->quarter.finished);
    put_length(answer, desk, "finished_radius", wanted->quarter.radius);
    put_length(answer, desk, "seam_allowance", wanted->quarter.allowance);
    put_length(answer, desk, "convex_cut_square", made.convex_cut_square);
    put_length(answer, desk, "convex_cut_radius", made.convex_cut_radius);
    put_length(answer, desk, "convex_cut_leg", made.convex_cut_leg);
    put_length(answer, desk, "concave_cut_square", made.concave_cut_square);
    put_length(answer, desk, "concave_cut_radius", made.concave_cut_radius);
    put_length(answer, desk, "concave_cut_leg", made.concave_cut_leg);
    put_length(answer, desk, "centre_inset", made.centre_inset);
    put_length(answer, desk, "finished_seam_length", made.seam_length);
    return answer;
}

static const struct option_row curve_options[] = {
    { "finished", KIND_LENGTH, offsetof(struct curve_request, quarter.finished), MUSLIN_ARG_FINISHED,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "side of the finished square" },
    { "radius", KIND_LENGTH, offsetof(struct curve_request, quarter.radius), MUSLIN_ARG_RADIUS, OPTION_REQUIRED, NULL,
      "radius of the curved seam, about one corner of the finished square; less than its side" },
    OPTION_SEAM(curve_request, quarter.allowance, quarter.take_up),
    OPTION_ROUNDING(curve_request, rounding),
    OPTION_END
};

const struct command curve_command = {
    .name = "curve",
    .about = "templates for a square with a quarter circle in one corner",
    .operands = "FINISHED-SQUARE",
    .examples = "  muslin curve 7 --radius 5\n"
                "  muslin curve \"20 cm\" --radius \"15 cm\" --seam \"0.75 cm\" --units cm",
    .options = curve_options,
    .request_size = sizeof(struct curve_request),
    .start = start_curve,
    .answer = answer_curve,
    .show = show_curve
};

/* ---- polygon ---------------------------------------------------------------------------------------------------- */

static const struct word measure_words[] = { { "side", MUSLIN_POLYGON_MEASURE_SIDE },
                                             { "flats", MUSLIN_POLYGON_MEASURE_FLATS },
                                             { "corners", MUSLIN_POLYGON_MEASURE_CORNERS },
                                             { "centre", MUSLIN_POLYGON_MEASURE_CENTRE },
                                             { NULL, 0 } };
static const struct word polygon_words[] = {
    { "triangle", 3 }, { "square", 4 }, { "hexagon", 6 }, { "octagon", 8 }, { NULL, 0 }
};

struct polygon_request {
    muslin_len finished;
    int32_t sides;
    int32_t measure;
    struct muslin_seam_spec seam;
    struct muslin_rounding_spec rounding;
};

static void start_polygon(void *request)
{
    struct polygon_request *wanted = request;
    wanted->sides = 6;
    wanted->measure = MUSLIN_POLYGON_MEASURE_SIDE;
    wanted->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

/* From flat to flat a polygon is cut two effective allowances larger; a triangle, from a side to the corner, three. The
 * finished measure is known to the tick, which is finer than anyone cuts. */
static bool find_cut_flats(struct desk *desk, const struct polygon_request *wanted, muslin_len finished,
                           muslin_len *cut)
{
    const struct muslin_rounding_spec to_tick = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded half = { .size = sizeof half };
    muslin_len both;
    if (!worked(desk, muslin_seam_cut_from_finished(finished, &wanted->seam, cut, &desk->problem)))
        return false;
    if (wanted->sides != 3)
        return true;
    return worked(desk, muslin_length_subtract(*cut, finished, &both)) &&
           worked(desk, muslin_length_divide(both, 2, &to_tick, &half)) &&
           worked(desk, muslin_length_add(*cut, half.value, cut));
}

static bool put_polygon(json_t *answer, struct desk *desk, const struct polygon_request *wanted)
{
    const struct muslin_rounding_spec to_tick = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_regular_polygon exact = { .size = sizeof exact };
    struct muslin_regular_polygon finished = { .size = sizeof finished };
    struct muslin_regular_polygon cut = { .size = sizeof cut };
    struct muslin_rounded square = { .size = sizeof square };
    muslin_len cut_flats;
    if (!worked(desk, muslin_shape_regular_polygon(wanted->sides, wanted->measure, wanted->finished, &wanted->rounding,
                                                   &finished, &desk->problem)) ||
        !worked(desk, muslin_shape_regular_polygon(wanted->sides, wanted->measure, wanted->finished, &to_tick, &exact,
                                                   &desk->problem)) ||
        !find_cut_flats(desk, wanted, exact.flats, &cut_flats) ||
        !worked(desk, muslin_shape_regular_polygon(wanted->sides, MUSLIN_POLYGON_MEASURE_FLATS, cut_flats,
                                                   &wanted->rounding, &cut, &desk->problem)) ||
        !worked(desk, muslin_length_root_of_area(finished.area, &to_tick, &square)))
        return false;
    put_length(answer, desk, "finished_side", finished.side);
    put_length(answer, desk, "finished_flat_to_flat", finished.flats);
    put_length(answer, desk, "finished_corner_to_corner", finished.corners);
    put_length(answer, desk, "finished_centre_to_corner", finished.centre);
    put_length(answer, desk, "finished_square_of_same_area", square.value);
    put_length(answer, desk, "cut_side", cut.side);
    put_length(answer, desk, "cut_flat_to_flat", cut.flats);
    put_length(answer, desk, "cut_corner_to_corner", cut.corners);
    return true;
}

static json_t *answer_polygon(const void *request, struct desk *desk)
{
    const struct polygon_request *wanted = request;
    json_t *answer = json_object();
    put_text(answer, "polygon", word_of(polygon_words, wanted->sides));
    put_text(answer, "named_by", word_of(measure_words, wanted->measure));
    put_length(answer, desk, "finished", wanted->finished);
    put_length(answer, desk, "seam_allowance", wanted->seam.allowance);
    if (!put_polygon(answer, desk, wanted)) {
        json_decref(answer);
        return NULL;
    }
    return answer;
}

static const struct option_row polygon_options[] = {
    { "finished", KIND_LENGTH, offsetof(struct polygon_request, finished), MUSLIN_ARG_LENGTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "the finished measure that is known" },
    { "shape", KIND_CHOICE, offsetof(struct polygon_request, sides), MUSLIN_ARG_SIDES, 0, polygon_words,
      "triangle (equal sides), square, hexagon (the usual) or octagon" },
    { "by", KIND_CHOICE, offsetof(struct polygon_request, measure), MUSLIN_ARG_MEASURE, 0, measure_words,
      "what that measure is: side (the usual), flats (from a side straight across; of a triangle its height), corners "
      "(between the corners farthest apart) or centre (from the centre to a corner)" },
    OPTION_SEAM(polygon_request, seam.allowance, seam.take_up),
    OPTION_ROUNDING(polygon_request, rounding),
    OPTION_END
};

const struct command polygon_command = {
    .name = "polygon",
    .about = "triangle, square, hexagon or octagon by one of its measures",
    .operands = "FINISHED-MEASURE",
    .examples = "  muslin polygon 2\n"
                "  muslin polygon \"2 3/4\" --by flats --to 1/16\n"
                "  muslin polygon 30 --shape octagon --by flats",
    .options = polygon_options,
    .request_size = sizeof(struct polygon_request),
    .start = start_polygon,
    .answer = answer_polygon,
    .show = show_polygon
};
