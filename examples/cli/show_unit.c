/* show_unit.c - a pieced unit as one works: pieces to cut, steps of sewing; and the table of what cloth can become.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <muslin/muslin.h>

#include "look.h"
#include "sheet.h"

static int64_t count_of(json_t *object, const char *member)
{
    return json_integer_value(json_object_get(object, member));
}

/* What people call it; the option words are shorter. */
struct called {
    const char *word;
    const char *name;
    const char *size; /* the end of "finishing ..." */
};

static const struct called names[] = {
    { "half-square", "half-square triangle", NULL },
    { "quarter-square", "quarter-square triangle", NULL },
    { "split-quarter", "split quarter-square", NULL },
    { "flying-geese", "flying geese", NULL },
    { "half-rectangle", "half-rectangle triangle", NULL },
    { "triangle-60", "60 degree triangle", "{finished_height} high ({finished_width} wide)" },
    { "diamond-60", "60 degree diamond", "{finished_height} from side to side (each side {finished_width})" },
    { "diamond-45", "45 degree diamond", "{finished_height} from side to side (each side {finished_width})" },
    { "hexagon", "hexagon", "{finished_height} from side to side ({finished_width} from corner to corner)" },
    { "half-hexagon", "half-hexagon", "{finished_height} high ({finished_width} along its long side)" },
    { "trapezoid", "trapezoid", "{finished_width} along its long side, {finished_height} high" },
    { "eight-pointed-star", "eight-pointed star", NULL },
    { "slanted-slice", "slanted slice", "{finished_width} across, from a strip set {finished_height} high finished" },
};

static const struct called ways[] = {
    { "pieces", "piece by piece", NULL },
    { "two-at-a-time", "two at a time", NULL },
    { "four-all-round", "four at a time, sewn all round", NULL },
    { "four-midpoints", "four at a time, sewn from middle to middle of the sides", NULL },
    { "eight-at-a-time", "eight at a time", NULL },
    { "four-at-a-time", "four at a time", NULL },
    { "flipped-corners", "with stitch-and-flip corners", NULL },
    { "strips", "from strips", NULL },
    { "bias-strips", "from two strips joined, cut on point", NULL },
};
#define CALLED(list, object, member) called_in(list, sizeof list / sizeof list[0], object, member)

static struct called called_in(const struct called *list, size_t count, json_t *object, const char *member)
{
    const char *word = json_string_value(json_object_get(object, member));
    for (size_t i = 0; i < count; i++)
        if (strcmp(list[i].word, word) == 0)
            return list[i];
    return (struct called){ word, word, NULL };
}

const char *called_unit(json_t *object, const char *member)
{
    return CALLED(names, object, member).name;
}

const char *called_way(json_t *object, const char *member)
{
    return CALLED(ways, object, member).name;
}

/* ---- before cutting ---------------------------------------------------------------------------------------------- */

static bool has_a_darker_fabric(json_t *answer)
{
    return says(answer, "kind", "half-square") || says(answer, "kind", "quarter-square") ||
           says(answer, "kind", "half-rectangle");
}

enum { WORTH_SAYING = MUSLIN_TICKS_PER_INCH / 32, LARGE = MUSLIN_TICKS_PER_INCH / 16 };

/* A star is as large as its diamonds make it. */
static void show_star(struct sheet *sheet, json_t *answer)
{
    muslin_len wider = count_of(json_object_get(answer, "wider_by"), "ticks");
    if (wider >= WORTH_SAYING)
        sheet_point(sheet, answer, "The diamonds are rounded too: with seams of just {seam_allowance} the star comes "
                                   "out {off_by} wider than {finished_width}, and trimming it would cut into its "
                                   "points. Take the seams between the diamonds a thread deeper until it measures "
                                   "{finished_width} from point to point, or try a finer --to.");
    if (wider <= -WORTH_SAYING)
        sheet_point(sheet, answer, "The diamonds are rounded too: with seams of just {seam_allowance} the star comes "
                                   "out {off_by} narrower than {finished_width}. Take the seams between the diamonds "
                                   "less deep until it measures {finished_width} from point to point, or try a finer "
                                   "--to.");
}

/* Pieces set in that rounding made larger by more than 1/16 in. */
static void show_excess(struct sheet *sheet, json_t *answer)
{
    json_t *pieces = json_object_get(answer, "pieces");
    bool excess = false;
    for (size_t i = 0; i < json_array_size(pieces); i++) {
        json_t *piece = json_array_get(pieces, i);
        if (count_of(json_object_get(piece, "larger_than_the_diamonds_ask_for_by"), "ticks") <= LARGE)
            continue;
        sheet_point(sheet, piece, "The {shape}s of fabric {fabric} cut {cut_width} are "
                                  "{larger_than_the_diamonds_ask_for_by} larger than diamonds cut so ask for.");
        excess = true;
    }
    if (excess)
        sheet_point(sheet, answer, "What is too large hangs over outside and is trimmed in the end; a finer grid, as "
                                   "with --to 1/16, leaves less of it.");
}

static void show_bonus(struct sheet *sheet, json_t *answer)
{
    if (json_object_get(answer, "bonus") != NULL)
        sheet_point(sheet, answer, "The corners cut off can become {bonus.half_squares:half-square triangle} of "
                                   "{bonus.unfinished} unfinished for each set: before cutting them off, sew a second "
                                   "line {bonus.second_line_beside} beside the first, towards the corner, and cut "
                                   "between the two.");
}

static void show_hands(struct sheet *sheet, json_t *answer)
{
    if (count_of(answer, "mirrored_of_one_recipe") > 0)
        sheet_point(sheet, answer, "Two at a time, each set gives {mirrored_of_one_recipe:unit} that are the mirror "
                                   "image of the others. With --mirrored say how many of those you can use; with --method "
                                   "pieces you sew each as you want it.");
    if (says(answer, "kind", "half-rectangle"))
        sheet_point(sheet, answer, "Cut the rectangles right side up, in a single layer: folded cloth, or layers laid "
                                   "face to face, would give half of them mirrored, and no turning makes one into the "
                                   "other.");
}

static void show_before(struct sheet *sheet, json_t *answer)
{
    bool sewn = json_array_size(json_object_get(answer, "steps")) > 0;
    if (!sewn && json_array_size(json_object_get(answer, "warnings")) == 0)
        return;
    sheet_heading(sheet, "Before you cut");
    if (sewn && json_object_get(answer, "unfinished_width") != NULL)
        sheet_point(sheet, answer, "Make one test unit first and measure it before you cut the rest.");
    if (has_a_darker_fabric(answer))
        sheet_point(sheet, answer, "Fabric 1 stands for the darker one, which seams are pressed towards.");
    show_hands(sheet, answer);
    if (says(answer, "kind", "eight-pointed-star")) {
        show_star(sheet, answer);
        show_excess(sheet, answer);
    }
    show_sentences(sheet, json_object_get(answer, "warnings"));
    show_bonus(sheet, answer);
    if (json_object_get(answer, "other_methods") != NULL)
        sheet_point(sheet, answer, "Other ways to make it, with --method: {other_methods}.");
}

/* ---- cutting ----------------------------------------------------------------------------------------------------- */

struct cutting {
    const char *shape;
    const char *blunt;
    const char *sharp; /* where the narrow edge has no length; null: there is always one */
};

#define STRIPS ", from strips cut {cut_height} wide"
#define WEDGE "Fabric {fabric}: {count:wedge} with a {degrees} degree point" STRIPS ": wide end {wide_edge_as_cut}, "
#define WEDGE_TAKES "; along the strip the first takes its wide end, each further one {further_along_the_strip}"
#define TRIANGLE "Fabric {fabric}: {count:triangle} with {degrees} degree corners" STRIPS ": base {wide_edge_as_cut}, "
#define TRIANGLE_TAKES "; along the strip the first takes its base, each further one {further_along_the_strip}"
#define PAIRS "Fabric {fabric}: {count} times {pieces_from_each:triangle} with a square end, the long side cut at " \
              "{degrees} degrees" STRIPS ": wide edge {wide_edge_as_cut}, "
#define PAIRS_TAKE "; along the strip each {pieces_from_each} take {further_along_the_strip}"
#define FIRST_TAKES "allow {cut_width} for the first, {further_along_the_strip} for each further one"

static const struct cutting cuttings[] = {
    { "square", "Fabric {fabric}: {count:square} cut {cut_width}", NULL },
    { "rectangle", "Fabric {fabric}: {count:rectangle} cut {cut_width} by {cut_height}", NULL },
    { "octagon", "Fabric {fabric}: {count:octagon}, each from a square cut {cut_width} that loses its corners at "
                 "{degrees} degrees: each edge {wide_edge_as_cut} as cut", NULL },
    { "slice", "Fabric {fabric}: {count:slice} across a strip set {cut_height} wide unfinished, cut at {degrees} "
               "degrees: edges along it {wide_edge_as_cut} as cut; along the strip set " FIRST_TAKES, NULL },
    { "diamond", "Fabric {fabric}: {count:diamond} with a {degrees} degree point" STRIPS ", by cuts {cut_height} "
                 "apart: each side {wide_edge_as_cut} as cut; along the strip " FIRST_TAKES, NULL },
    { "hexagon", "Fabric {fabric}: {count:hexagon}" STRIPS ", in rectangles {further_along_the_strip} long that lose "
                 "their corners at {degrees} degrees: each edge {wide_edge_as_cut} as cut", NULL },
    { "trapezoid", "Fabric {fabric}: {count:trapezoid} with {degrees} degree ends" STRIPS ": long edge "
                   "{wide_edge_as_cut}, short edge {narrow_edge_as_cut} as cut; along the strip the first takes its "
                   "long edge, each further one {further_along_the_strip}", NULL },
    { "wedge", WEDGE "blunt end {narrow_edge_as_cut} as cut" WEDGE_TAKES, WEDGE "the point sharp, as cut" WEDGE_TAKES },
    { "triangle", TRIANGLE "blunt tip {narrow_edge_as_cut} as cut" TRIANGLE_TAKES,
      TRIANGLE "the tip sharp, as cut" TRIANGLE_TAKES },
};

static const char *cutting_template(json_t *piece)
{
    bool sharp = count_of(json_object_get(piece, "narrow_edge_as_cut"), "ticks") == 0;
    const struct cutting *cutting = cuttings;
    while (!says(piece, "shape", cutting->shape))
        cutting++;
    if (says(piece, "shape", "triangle") && count_of(piece, "pieces_from_each") == 2)
        return sharp ? PAIRS "the tip sharp, as cut" PAIRS_TAKE
                     : PAIRS "blunt tip {narrow_edge_as_cut} as cut" PAIRS_TAKE;
    return sharp && cutting->sharp != NULL ? cutting->sharp : cutting->blunt;
}

/* How a piece is cut whose mirror image is another; null: of no other piece does it matter. */
static const char *way_of_cutting(json_t *answer, bool mirrored)
{
    if (says(answer, "kind", "half-rectangle"))
        return mirrored ? "for the mirrored units: right side up, lying {cut_width} wide, cut from the upper left "
                          "to the lower right"
                        : "right side up, lying {cut_width} wide, cut from the lower left to the upper right";
    if (says(answer, "kind", "slanted-slice"))
        return mirrored ? "for the mirrored units: right side up, the strips lying level, cut from the upper left to "
                          "the lower right"
                        : "right side up, the strips lying level, cut from the lower left to the upper right";
    return NULL;
}

static void show_piece(struct sheet *sheet, json_t *piece, json_t *answer)
{
    char *cut = sheet_sentence(piece, cutting_template(piece));
    json_t *copy = json_copy(piece);
    json_object_set_new(copy, "cut", json_string(cut));
    bool whole = says(piece, "cut_again", "no");
    const char *way = way_of_cutting(answer, count_of(piece, "hand") == 2);
    sheet_point(sheet, copy, whole ? "{cut}." : "{cut}; cut each {cut_again}, into {pieces_from_each} triangles.");
    if (way != NULL)
        sheet_under(sheet, copy, way);
    sheet_under(sheet, copy, "{grain}");
    json_decref(copy);
    free(cut);
}

static void show_pieces(struct sheet *sheet, json_t *answer)
{
    json_t *pieces = json_object_get(answer, "pieces");
    sheet_step(sheet, "Cut");
    for (size_t i = 0; i < json_array_size(pieces); i++)
        show_piece(sheet, json_array_get(pieces, i), answer);
}

/* ---- sewing ------------------------------------------------------------------------------------------------------ */

static void show_steps(struct sheet *sheet, json_t *answer)
{
    json_t *steps = json_object_get(answer, "steps");
    sheet_step(sheet, json_object_get(answer, "unfinished_width") != NULL ? "Sew, for one set" : "Cut to shape");
    for (size_t i = 0; i < json_array_size(steps); i++) {
        json_t *step = json_copy(json_array_get(steps, i));
        json_object_set_new(step, "number", json_integer((json_int_t)i + 1));
        sheet_point(sheet, step, count_of(step, "times") == 1 ? "({number}) {sentence}"
                                                              : "({number}) {sentence} Do so {times} times.");
        json_decref(step);
    }
    if (json_array_size(steps) == 0)
        sheet_point(sheet, answer, "Nothing is sewn within it: it is ready as cut.");
}

/* ---- the whole --------------------------------------------------------------------------------------------------- */

static const char *policy_template(json_t *answer)
{
    if (says(answer, "policy", "customary"))
        return "Seam allowance {seam_allowance}; triangles by the customary additions, cut sizes rounded {rounded} "
               "{rounded_to}.";
    if (says(answer, "policy", "oversize"))
        return "Seam allowance {seam_allowance}; triangles by the customary additions and {room_to_trim} of room to "
               "trim each unit, cut sizes rounded {rounded} {rounded_to}.";
    return "Seam allowance {seam_allowance}; cut sizes by geometry, rounded {rounded} {rounded_to}: there is no room "
           "to trim beyond that.";
}

static void show_wish(struct sheet *sheet, json_t *answer)
{
    bool mirrored = count_of(answer, "mirrored_units") > 0;
    struct called kind = CALLED(names, answer, "kind");
    char *size = sheet_sentence(answer, kind.size != NULL ? kind.size : "{finished_width} by {finished_height}");
    char title[400];
    snprintf(title, sizeof title, "{units:unit}%s: %s finishing %s, made %s.",
             mirrored ? " and {mirrored_units} mirrored" : "", kind.name, size, CALLED(ways, answer, "method").name);
    free(size);
    sheet_title(sheet, answer, title);
    sheet_point(sheet, answer, "One set gives {units_of_one_recipe:unit}.");
    sheet_point(sheet, answer, count_of(answer, "mirrored_recipes") > 0
                                   ? "You need {recipes:set} and {mirrored_recipes} mirrored, with "
                                     "{units_to_spare:unit} to spare."
                                   : "You need {recipes:set}, with {units_to_spare:unit} to spare.");
    if (json_object_get(answer, "unfinished_width") != NULL)
        sheet_point(sheet, answer, "Sewn and trimmed, a unit measures {unfinished_width} by {unfinished_height} "
                                   "unfinished.");
    sheet_point(sheet, answer, policy_template(answer));
}

void show_unit(struct sheet *sheet, json_t *answer)
{
    show_wish(sheet, answer);
    show_before(sheet, answer);
    show_pieces(sheet, answer);
    show_steps(sheet, answer);
}

/* ---- the table of what cloth can become -------------------------------------------------------------------------- */

static void show_row(struct sheet *sheet, const char *kind, const char *method, const char *finished,
                     const char *units)
{
    char line[200];
    snprintf(line, sizeof line, "  %-24s %-16s %-26s %6s", kind, method, finished, units);
    sheet_line(sheet, line);
}

static void show_make(struct sheet *sheet, json_t *make)
{
    bool square = json_equal(json_object_get(make, "finished_width"), json_object_get(make, "finished_height"));
    char *finished = sheet_sentence(make, square ? "{finished_width}" : "{finished_width} by {finished_height}");
    char *units = sheet_sentence(make, "{units}");
    show_row(sheet, CALLED(names, make, "kind").name, json_string_value(json_object_get(make, "method")), finished,
             units);
    free(units);
    free(finished);
}

/* A line of the table that only applies where this is made. */
static void show_remark(struct sheet *sheet, json_t *makes, const char *kind, const char *method, const char *remark)
{
    for (size_t i = 0; i < json_array_size(makes); i++) {
        json_t *make = json_array_get(makes, i);
        if (says(make, "kind", kind) && says(make, "method", method))
            sheet_point(sheet, make, remark);
    }
}

static void show_remarks(struct sheet *sheet, json_t *makes)
{
    show_remark(sheet, makes, "half-square", "strips",
                "Half-square triangles by strips are cut in pairs, and the size is the largest of which a pair fits.");
    show_remark(sheet, makes, "half-square", "bias-strips",
                "Half-square triangles by bias-strips: join two whole strips, then cut; {units_from_one_of_each:unit} "
                "from each pair of strips. Along the strips each is allowed its diagonal as cut sizes are rounded "
                "(--to); where they nearly come out, one more may fit.");
    show_remark(sheet, makes, "split-quarter", "two-at-a-time",
                "Split quarter-squares two at a time: half of them are the mirror image of the others.");
    show_remark(sheet, makes, "snowball", "flipped-corners",
                "A snowball is reckoned with corners of exactly a third of its side, which meet the patches of a "
                "nine-patch beside it: so the corners too come in whole steps, and the side in three of them at a "
                "time. Other corners: muslin unit snowball --corner.");
    show_remark(sheet, makes, "half-rectangle", "pieces",
                "A half-rectangle triangle is reckoned twice as wide as high.");
    show_remark(sheet, makes, "trapezoid", "strips", "A trapezoid is reckoned three times as wide as high.");
    show_remark(sheet, makes, "slanted-slice", "strips", "A slanted slice is cut at 45 degrees and reckoned as wide, "
                "measured straight between the cuts, as its strip set is high, both finished.");
}

void show_makes(struct sheet *sheet, json_t *answer)
{
    json_t *makes = json_object_get(answer, "makes");
    sheet_title(sheet, answer, "{for_each_fabric:piece} cut {cut_width} by {cut_length} of each fabric can make:");
    if (json_array_size(makes) == 0) {
        sheet_point(sheet, answer, "Nothing: it is too small for any unit in steps of {finished_in_steps_of}.");
        return;
    }
    show_row(sheet, "unit", "made by", "finished size, at most", "units");
    for (size_t i = 0; i < json_array_size(makes); i++)
        show_make(sheet, json_array_get(makes, i));
    sheet_gap(sheet);
    sheet_point(sheet, answer, "Each line takes all the cloth for itself. Different pieces are not mixed within a "
                               "strip or square. 0 units: the size fits, but there are too few pieces for one set.");
    show_remarks(sheet, makes);
    for (size_t i = 0, said = 0; i < json_array_size(makes) && said == 0; i++)
        if (says(json_array_get(makes, i), "method", "flipped-corners")) {
            sheet_point(sheet, answer, "Flipped-corners are stitch-and-flip corners.");
            said = 1;
        }
    sheet_point(sheet, answer, "Finished sizes in steps of {finished_in_steps_of}: it is the width that is stepped, of "
                               "60 and 45 degree pieces, hexagons and half-hexagons the height, the last number; the "
                               "other measure follows. What to cut for one: muslin unit, with the kind, the size and "
                               "--method.");
}
