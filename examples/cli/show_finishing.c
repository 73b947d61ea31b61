/* show_finishing.c - borders, batting, backing and binding as a written pattern, and borders alone.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>

#include "look.h"
#include "sheet.h"

/* ---- borders ---------------------------------------------------------------------------------------------------- */

static void show_border_pieces(struct sheet *sheet, json_t *border)
{
    if (says(border, "style", "sides-first"))
        sheet_under(sheet, border, "Cut two sides {side_cut_length} long and sew them on; then cut top and bottom "
                                   "{top_cut_length} long and sew them over both.");
    else if (says(border, "style", "top-first"))
        sheet_under(sheet, border, "Cut top and bottom {top_cut_length} long and sew them on; then cut two sides "
                                   "{side_cut_length} long and sew them over both.");
    else if (says(border, "style", "cornerstones"))
        sheet_under(sheet, border, "Cut two sides {side_cut_length} long, top and bottom {top_cut_length} long, and "
                                   "four cornerstones cut {cornerstone_cut} square. Sew the sides on; sew a "
                                   "cornerstone to each end of top and bottom, then sew those on.");
    else
        sheet_under(sheet, border, "Cut two sides {side_cut_length} long, top and bottom {top_cut_length} long, mitre "
                                   "included. Centre each piece on its edge, stop one seam allowance before the "
                                   "corner, sew the mitre at 45 degrees, and trim it when it lies flat.");
}

static void show_border(struct sheet *sheet, json_t *border)
{
    sheet_point(sheet, border, "Border {number}, {finished_width_of_border} finished ({style}): pieces cut {cut_width} "
                               "wide.");
    show_border_pieces(sheet, border);
    if (json_is_true(json_object_get(border, "lengthwise")))
        sheet_under(sheet, border, "They are cut along the cloth, without joins, from {cloth_length}.");
    else if (json_integer_value(json_object_get(border, "joins")) > 0)
        sheet_under(sheet, border, "They come from {strips:strip} cut across the cloth, {cloth_length} of it, joined "
                                   "end to end: {joins:join}, {join}, {loss_per_join} lost in each.");
    else
        sheet_under(sheet, border, "They come from {strips:strip} cut across the cloth, {cloth_length} of it.");
    sheet_under(sheet, border, "With this border the top measures {unfinished_width} by {unfinished_length} unfinished "
                               "({finished_width} by {finished_length} finished).");
}

static void show_borders(struct sheet *sheet, json_t *plan)
{
    json_t *borders = json_object_get(plan, "borders");
    if (json_array_size(borders) == 0)
        return;
    sheet_step(sheet, "BORDERS, FOR EACH TOP");
    sheet_point(sheet, plan, "The lengths below are the arithmetic. Before each border, measure your top through "
                             "the middle in three places each way, cut the border to that (the middle figure, where "
                             "they differ) and ease the top to fit. Never sew on a long strip and cut it off where it "
                             "ends.");
    for (size_t i = 0; i < json_array_size(borders); i++)
        show_border(sheet, json_array_get(borders, i));
    sheet_point(sheet, plan, "Press each border seam towards the border.");
}

/* ---- batting, backing, binding ---------------------------------------------------------------------------------- */

static void show_batting(struct sheet *sheet, json_t *plan)
{
    json_t *batting = json_object_get(plan, "batting");
    if (batting == NULL)
        return;
    sheet_step(sheet, "BATTING, FOR EACH TOP");
    sheet_point(sheet, batting, "Cut the batting {cut_width} by {cut_length}: {margin} beyond the quilt on every "
                                "side.");
    json_t *package = json_object_get(batting, "package");
    if (package == NULL)
        sheet_point(sheet, batting, "No usual package is as large as that: join pieces, or buy it from a roll.");
    else
        sheet_point(sheet, package, json_is_true(json_object_get(package, "lies_turned"))
                                        ? "The smallest usual package that covers it is {name}, {package_width} by "
                                          "{package_length}, laid the other way round."
                                        : "The smallest usual package that covers it is {name}, {package_width} by "
                                          "{package_length}.");
    json_t *roll = json_object_get(batting, "from_a_roll");
    if (roll != NULL)
        sheet_point(sheet, roll, "Or from a roll {roll_width} wide: {bought}, in {pieces:piece} laid edge to edge and "
                                 "joined by hand ({joins:join}), without seam allowance.");
}

static void show_plan_backing(struct sheet *sheet, json_t *plan)
{
    json_t *backing = json_object_get(plan, "backing");
    if (backing == NULL)
        return;
    sheet_step(sheet, "BACKING, FOR EACH TOP");
    sheet_point(sheet, backing, "It must be at least {cut_width_needed} by {cut_length_needed} as cut, before "
                                "quilting: {margin} beyond the quilt on every side.");
    show_backing(sheet, backing);
}

static void show_binding(struct sheet *sheet, json_t *plan)
{
    json_t *binding = json_object_get(plan, "binding");
    if (binding == NULL)
        return;
    sheet_step(sheet, "BINDING, FOR EACH TOP");
    sheet_point(sheet, binding, "Once round the quilt is {finished_perimeter} finished; with something for the ends, "
                                "{length_wanted}.");
    sheet_point(sheet, binding, "Cut {strips:strip} across the cloth, each cut {strip_cut_width} wide, and join them "
                                "end to end with {joins:join} ({join}, {loss_per_join} lost in each): the run is "
                                "{joined_length} long, {spare} more than wanted.");
    json_t *across = json_object_get(binding, "across");
    if (across != NULL)
        sheet_point(sheet, across, "Folded ({fold}) it is {folded_before_sewing} wide before sewing; with "
                                   "{front_finished} finished on the front, the back shows {back_finished} finished.");
}
