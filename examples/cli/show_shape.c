/* show_shape.c - a quarter circle and a regular polygon, as one draws and cuts them.
 *
 * SPDX-License-Identifier: MIT */
#include "look.h"
#include "sheet.h"

void show_curve(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "A square, {finished_square} finished, with a quarter circle of {finished_radius} radius "
                             "(finished) about one corner; seam allowance {seam_allowance}.");
    sheet_heading(sheet, "The convex piece, the quarter disc");
    sheet_point(sheet, answer, "Cut a square {convex_cut_square}. From one corner measure {centre_inset} in from both "
                               "cut edges: that point is the centre.");
    sheet_point(sheet, answer, "About it draw an arc of {convex_cut_radius} (cut) from edge to edge, and cut along "
                               "it.");
    sheet_point(sheet, answer, "To check: the straight cut edges measure {convex_cut_leg} each.");
    sheet_heading(sheet, "The concave piece, the background");
    sheet_point(sheet, answer, "Cut a square {concave_cut_square}. Mark the centre {centre_inset} in from both cut "
                               "edges of one corner.");
    sheet_point(sheet, answer, "About it draw an arc of {concave_cut_radius} (cut), and cut that corner away.");
    sheet_point(sheet, answer, "To check: {concave_cut_leg} of each shortened cut edge is left.");
    sheet_heading(sheet, "Sewing");
    sheet_point(sheet, answer, "The curved seam is {finished_seam_length} long (finished). The cut curves differ in "
                               "length, as they must: match the middles and the ends.");
    sheet_point(sheet, answer, "Curved edges run through the bias and stretch: handle them gently.");
    sheet_point(sheet, answer, "Sew one test block and measure it before you cut the rest.");
}

void show_polygon(struct sheet *sheet, json_t *answer)
{
    int triangle = says(answer, "polygon", "triangle");
    sheet_say(sheet, answer, says(answer, "polygon", "octagon") ? "An {polygon} with equal sides:"
                                                                : "A {polygon} with equal sides:");
    sheet_heading(sheet, "Finished");
    sheet_point(sheet, answer, "Each side {finished_side}.");
    sheet_point(sheet, answer, triangle ? "From a side straight up to the corner {finished_flat_to_flat}."
                                        : "From flat to flat {finished_flat_to_flat}.");
    if (!triangle)
        sheet_point(sheet, answer, "Between the corners farthest apart {finished_corner_to_corner}.");
    sheet_point(sheet, answer, "From the centre to a corner {finished_centre_to_corner}.");
    sheet_point(sheet, answer, "As large as a square of {finished_square_of_same_area} finished.");
    sheet_heading(sheet, "Cut, with sharp corners");
    sheet_point(sheet, answer, triangle ? "From a strip cut {cut_flat_to_flat} wide, the height of the cut triangle."
                                        : "From a strip cut {cut_flat_to_flat} wide, from flat to flat.");
    sheet_point(sheet, answer, "Each cut side {cut_side}.");
    if (!triangle)
        sheet_point(sheet, answer, "Between the cut corners farthest apart {cut_corner_to_corner}.");
    sheet_gap(sheet);
    sheet_say(sheet, answer, "The cut sizes add a seam allowance of {seam_allowance} on every side. Patterns name such "
                             "shapes by different measures: check which one yours means, and sew a test block first.");
}
