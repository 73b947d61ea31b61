/* show_template.c - a unit of one's own shape: does it come out, and each piece as one draws and cuts it.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "look.h"
#include "sheet.h"

static const char *corner_template(json_t *corner, bool again)
{
    if (says(corner, "edge", "across the tip"))
        return "corner {corner}, finished at {finished_x} and {finished_y}: cut at {cut_x} and {cut_y}; then straight "
               "across the tip";
    if (says(corner, "edge", "convex"))
        return "corner {corner}, finished at {finished_x} and {finished_y}: cut at {cut_x} and {cut_y}; then along an "
               "arc of {cut_radius} radius (cut), bulging out, with its centre at {centre_x} and {centre_y}";
    if (says(corner, "edge", "concave"))
        return "corner {corner}, finished at {finished_x} and {finished_y}: cut at {cut_x} and {cut_y}; then along an "
               "arc of {cut_radius} radius (cut), bulging in, with its centre at {centre_x} and {centre_y}";
    return again ? "corner {corner}, beyond its tip: cut at {cut_x} and {cut_y}"
                 : "corner {corner}, finished at {finished_x} and {finished_y}: cut at {cut_x} and {cut_y}";
}

static void show_corners(struct sheet *sheet, json_t *corners)
{
    bool again = false;
    for (size_t i = 0; i < json_array_size(corners); i++) {
        json_t *corner = json_array_get(corners, i);
        sheet_point(sheet, corner, corner_template(corner, again));
        again = says(corner, "edge", "across the tip");
    }
}

static void show_rectangle(struct sheet *sheet, json_t *piece, bool margin)
{
    sheet_point(sheet, piece, margin ? "it comes from a rectangle cut {rectangle_cut_along_the_grain} along the "
                                       "straight grain by {rectangle_cut_across_the_grain} across it, with the margin "
                                       "all round"
                                     : "it comes from a rectangle cut {rectangle_cut_along_the_grain} along the "
                                       "straight grain by {rectangle_cut_across_the_grain} across it");
    if (part(piece, "straight_grain", "from_corner") != NULL)
        sheet_point(sheet, piece, "lay the straight grain along its edge from corner {straight_grain.from_corner} to "
                                  "corner {straight_grain.to_corner}");
    else
        sheet_point(sheet, piece, "it has no straight edge for the straight grain: lay that level with the drawing");
}

static void show_foundation(struct sheet *sheet, json_t *edges)
{
    for (size_t i = 0; i < json_array_size(edges); i++)
        sheet_point(sheet, json_array_get(edges, i),
                    "onto a foundation, with its edge from corner {from_corner} to corner {to_corner} on the sewing "
                    "line: a rectangle cut {rectangle_cut_along_the_edge} along that edge by "
                    "{rectangle_cut_across_the_edge} across it");
}

static void show_piece(struct sheet *sheet, json_t *piece, bool margin)
{
    char *heading = sheet_sentence(piece, "Piece {piece}, cut");
    sheet_heading(sheet, heading);
    free(heading);
    show_corners(sheet, json_object_get(piece, "corners"));
    show_rectangle(sheet, piece, margin);
    show_foundation(sheet, json_object_get(piece, "foundation"));
    show_sentences(sheet, json_object_get(piece, "warnings"));
}

static void show_cautions(struct sheet *sheet, json_t *answer)
{
    json_t *first = json_array_get(json_object_get(answer, "pieces"), 0);
    bool margin = any(answer, "margin", "ticks");
    sheet_heading(sheet, "Before you cut");
    sheet_point(sheet, answer, "Draw each piece on paper as it is finished, and the template about it: every cut edge "
                               "must run beside its seam at the same distance. In a deep, narrow notch look "
                               "whether the template runs into itself: that is not checked.");
    sheet_point(sheet, answer, "The drawing shows the right side of the cloth: on the wrong side a template lies face "
                               "down.");
    if (json_object_get(first, "foundation") != NULL && !margin)
        sheet_point(sheet, answer, "The rectangles for the foundation only just hold their pieces: give a --margin to "
                                   "have room.");
    sheet_point(sheet, answer, "Cut one test piece of each from scraps, sew a test block and measure it before you cut "
                               "the rest.");
}

void show_template_answer(struct sheet *sheet, json_t *answer)
{
    json_t *pieces = json_object_get(answer, "pieces");
    bool outline = json_is_true(json_object_get(answer, "outline_is_filled"));
    bool one = json_array_size(pieces) == 1;
    if (outline)
        sheet_say(sheet, answer, one ? "The piece fills the outline exactly: {finished_width} by {finished_height} "
                                       "finished."
                                     : "The {piece_count} pieces fill the outline exactly: {finished_width} by "
                                       "{finished_height} finished.");
    else
        sheet_say(sheet, answer, "Whether the pieces fill an outline is not checked, nor which edges lie on it, and on "
                                 "the bias: give the corners of the finished unit with --outline.");
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Places are told as in your drawing, first to the right, then up; with a minus to the "
                             "left, or down. Seam allowance {seam_allowance} on every edge.");
    for (size_t i = 0; i < json_array_size(pieces); i++)
        show_piece(sheet, json_array_get(pieces, i), any(answer, "margin", "ticks"));
    show_cautions(sheet, answer);
}
