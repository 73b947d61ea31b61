/* show_unit.c - a pieced unit as one works: pieces to cut, steps of sewing; and the table of what cloth can become.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "look.h"
#include "sheet.h"

static int64_t count_of(json_t *object, const char *member)
{
    return json_integer_value(json_object_get(object, member));
}

/* ---- cutting ----------------------------------------------------------------------------------------------------- */

/* Shapes that lie along a strip. */
static void strip_template(json_t *piece, char *template, size_t cap)
{
    const char *shape = json_string_value(json_object_get(piece, "shape"));
    if (count_of(piece, "pieces_from_each") == 1)
        snprintf(template, cap, "Fabric {fabric}: {count:%s}, from strips cut {cut_height} wide; the first takes "
                                "{cut_width} of a strip, each further one {further_along_the_strip}", shape);
    else
        snprintf(template, cap, "Fabric {fabric}: {count} times {pieces_from_each:%s}, from strips cut {cut_height} "
                                "wide; the first {pieces_from_each} take {cut_width} of a strip, each further "
                                "{pieces_from_each} {further_along_the_strip}", shape);
}

static const char *cutting_template(json_t *piece)
{
    if (says(piece, "shape", "square"))
        return "Fabric {fabric}: {count:square} cut {cut_width}";
    if (says(piece, "shape", "rectangle"))
        return "Fabric {fabric}: {count:rectangle} cut {cut_width} by {cut_height}";
    if (says(piece, "shape", "octagon"))
        return "Fabric {fabric}: {count:octagon}, each from a square cut {cut_width}";
    if (says(piece, "shape", "slice"))
        return "Fabric {fabric}: {count:slice} across a strip set {cut_height} wide unfinished, slanted 45 degrees; "
               "the first takes {cut_width} of its length, each further one {further_along_the_strip}";
    return NULL;
}

static void show_piece(struct sheet *sheet, json_t *piece)
{
    char along[300];
    strip_template(piece, along, sizeof along);
    const char *template = cutting_template(piece);
    char *cut = sheet_sentence(piece, template != NULL ? template : along);
    json_t *copy = json_copy(piece);
    json_object_set_new(copy, "cut", json_string(cut));
    bool whole = says(piece, "cut_again", "no");
    bool mirrored = count_of(piece, "hand") == 2;
    sheet_point(sheet, copy, whole ? "{cut}." : "{cut}; cut each {cut_again}, into {pieces_from_each} triangles.");
    if (mirrored)
        sheet_under(sheet, copy, "for the mirrored units: cut on the other diagonal");
    sheet_under(sheet, copy, "{grain}");
    json_decref(copy);
    free(cut);
}

static void show_pieces(struct sheet *sheet, json_t *answer)
{
    json_t *pieces = json_object_get(answer, "pieces");
    sheet_step(sheet, "Cut");
    if (says(answer, "kind", "half-rectangle") && count_of(answer, "mirrored_units") > 0)
        sheet_point(sheet, answer, "Units that lean the other way need rectangles cut on the other diagonal; no "
                                   "turning makes one into the other.");
    for (size_t i = 0; i < json_array_size(pieces); i++)
        show_piece(sheet, json_array_get(pieces, i));
}

/* ---- sewing ------------------------------------------------------------------------------------------------------ */

static void show_steps(struct sheet *sheet, json_t *answer)
{
    json_t *steps = json_object_get(answer, "steps");
    sheet_step(sheet, "Sew, for one recipe");
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

static bool has_a_darker_fabric(json_t *answer)
{
    return says(answer, "kind", "half-square") || says(answer, "kind", "quarter-square") ||
           says(answer, "kind", "half-rectangle");
}

static void show_notes(struct sheet *sheet, json_t *answer)
{
    bool sewn = json_array_size(json_object_get(answer, "steps")) > 0;
    if (!sewn && json_array_size(json_object_get(answer, "warnings")) == 0)
        return;
    sheet_heading(sheet, "Good to know");
    if (sewn && json_object_get(answer, "unfinished_width") != NULL)
        sheet_point(sheet, answer, "Make one test unit first and measure it before you cut the rest.");
    if (has_a_darker_fabric(answer))
        sheet_point(sheet, answer, "Fabric 1 stands for the darker one, which seams are pressed towards.");
    if (json_object_get(answer, "seam_meets_the_raw_edge_from_the_corner") != NULL)
        sheet_point(sheet, answer, "The seam does not run into the raw corner: it meets the raw edge "
                                   "{seam_meets_the_raw_edge_from_the_corner} from it, along the shorter side. Trim by "
                                   "that, so that it runs into the finished corner.");
    if (says(answer, "kind", "split-quarter") && says(answer, "method", "two-at-a-time"))
        sheet_point(sheet, answer, "Half of the units come out as the mirror image of the others.");
    if (json_object_get(answer, "bonus") != NULL)
        sheet_point(sheet, answer, "The corners cut off can become {bonus.half_squares:half-square} of "
                                   "{bonus.unfinished} unfinished for each recipe: before cutting, sew a second line "
                                   "{bonus.second_line_beside} beside the first, towards the corner, and cut between "
                                   "the two.");
    if (json_object_get(answer, "other_methods") != NULL)
        sheet_point(sheet, answer, "Other ways to make it, with --method: {other_methods}.");
    show_sentences(sheet, json_object_get(answer, "warnings"));
}

/* ---- the whole --------------------------------------------------------------------------------------------------- */

static void show_wish(struct sheet *sheet, json_t *answer)
{
    bool mirrored = count_of(answer, "mirrored_units") > 0;
    sheet_title(sheet, answer, mirrored ? "{units:unit} and {mirrored_units} mirrored: {kind} finishing "
                                          "{finished_width} by {finished_height}, made by {method}."
                                        : "{units:unit}: {kind} finishing {finished_width} by {finished_height}, "
                                          "made by {method}.");
    sheet_point(sheet, answer, "One recipe gives {units_of_one_recipe:unit}.");
    sheet_point(sheet, answer, mirrored ? "You need {recipes:recipe} and {mirrored_recipes} mirrored, with "
                                          "{units_to_spare:unit} to spare."
                                        : "You need {recipes:recipe}, with {units_to_spare:unit} to spare.");
    if (json_object_get(answer, "unfinished_width") != NULL)
        sheet_point(sheet, answer, "Sewn and trimmed, a unit measures {unfinished_width} by {unfinished_height} "
                                   "unfinished.");
    sheet_point(sheet, answer, "Seam allowance {seam_allowance}; cut sizes are {policy}.");
}

void show_unit(struct sheet *sheet, json_t *answer)
{
    show_wish(sheet, answer);
    show_pieces(sheet, answer);
    show_steps(sheet, answer);
    show_notes(sheet, answer);
}

/* ---- the table of what cloth can become -------------------------------------------------------------------------- */

static void show_row(struct sheet *sheet, const char *kind, const char *method, const char *finished,
                     const char *units)
{
    char line[200];
    snprintf(line, sizeof line, "  %-19s %-16s %-30s %6s", kind, method, finished, units);
    sheet_line(sheet, line);
}

static void show_make(struct sheet *sheet, json_t *make)
{
    bool square = json_equal(json_object_get(make, "finished_width"), json_object_get(make, "finished_height"));
    char *finished = sheet_sentence(make, square ? "{finished_width}" : "{finished_width} by {finished_height}");
    char *units = sheet_sentence(make, "{units}");
    show_row(sheet, json_string_value(json_object_get(make, "kind")),
             json_string_value(json_object_get(make, "method")), finished, units);
    free(units);
    free(finished);
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
    sheet_point(sheet, answer, "Each line takes all the cloth for itself. 0 units: the size fits, but there are too "
                               "few pieces for one recipe.");
    sheet_point(sheet, answer, "A half-rectangle is twice as wide as high, a trapezoid three times, a slanted slice as "
                               "wide as high; a snowball's corners are a third of it.");
    sheet_point(sheet, answer, "Finished sizes in steps of {finished_in_steps_of}; what to cut for one: muslin unit.");
}
