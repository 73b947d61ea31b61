/* show_finishing.c - borders, batting, backing and binding as a written pattern, and borders alone.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>

#include "look.h"
#include "sheet.h"

/* ---- borders ---------------------------------------------------------------------------------------------------- */

static void show_mitred_pieces(struct sheet *sheet, json_t *border)
{
    sheet_under(sheet, border, "Cut two sides {side_cut_length} long, top and bottom {top_cut_length} long, mitre "
                               "included. Of each, {mitre_extra} is for handling: the least is {side_least_length} and "
                               "{top_least_length}. Centre each piece on its edge, stop one seam allowance before the "
                               "corner, sew the mitre at 45 degrees, and trim it when it lies flat.");
}

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
        show_mitred_pieces(sheet, border);
}

static void show_cornerstone_cloth(struct sheet *sheet, json_t *border)
{
    if (says(border, "style", "cornerstones"))
        sheet_under(sheet, border, "The four cornerstones, cut {cornerstone_cut} square, need cloth of their own.");
}

static void show_border(struct sheet *sheet, json_t *border, bool only)
{
    sheet_point(sheet, border, only ? "The border, {finished_width_of_border} finished: pieces cut {cut_width} wide."
                                    : "Border {number}, {finished_width_of_border} finished: pieces cut {cut_width} "
                                      "wide.");
    show_border_pieces(sheet, border);
    if (json_is_true(json_object_get(border, "lengthwise")))
        sheet_under(sheet, border, "The long pieces are cut along the cloth, without joins, from {cloth_length}.");
    else if (json_integer_value(json_object_get(border, "joins")) > 0)
        sheet_under(sheet, border, "They come from {strips:strip} cut across the cloth, {cloth_length} of it, joined "
                                   "end to end: {joins:join}, {join}, {loss_per_join} lost in each.");
    else
        sheet_under(sheet, border, "They come from {strips:strip} cut across the cloth, {cloth_length} of it.");
    show_cornerstone_cloth(sheet, border);
    sheet_under(sheet, border, "With this border the top measures {unfinished_width} by {unfinished_length} unfinished "
                               "({finished_width} by {finished_length} finished).");
}

static bool any_is_mitred(json_t *borders)
{
    for (size_t i = 0; i < json_array_size(borders); i++)
        if (says(json_array_get(borders, i), "style", "mitred"))
            return true;
    return false;
}

static void show_each_border(struct sheet *sheet, json_t *answer)
{
    json_t *borders = json_object_get(answer, "borders");
    sheet_point(sheet, answer, "The lengths below are the arithmetic. Before each border, measure your top across the "
                               "centre and near each end, use the average, cut the border to that and ease the top to "
                               "fit. Never sew on a long strip and cut it off where it ends.");
    if (any_is_mitred(borders))
        sheet_point(sheet, answer, "A mitred piece is longer than the edge it is sewn to: where your top is longer or "
                                   "shorter than planned, cut the piece longer or shorter by as much.");
    for (size_t i = 0; i < json_array_size(borders); i++)
        show_border(sheet, json_array_get(borders, i), json_array_size(borders) == 1);
    sheet_point(sheet, answer, "Press each border seam towards the border.");
}

void show_border_answer(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "For a top {unfinished_width_before} by {unfinished_length_before} unfinished, from cloth "
                             "{cloth_usable_width} wide without its selvages (usable):");
    show_each_border(sheet, answer);
    show_sentences(sheet, json_object_get(answer, "warnings"));
}

static void show_borders(struct sheet *sheet, json_t *plan)
{
    json_t *borders = json_object_get(plan, "borders");
    if (json_array_size(borders) == 0)
        return;
    sheet_step(sheet, "BORDERS, FOR EACH TOP");
    show_each_border(sheet, plan);
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

/* Between the backing and the binding lies the quilting, which takes up some of the size. */
static void show_quilting(struct sheet *sheet, json_t *plan)
{
    if (json_object_get(plan, "backing") == NULL && json_object_get(plan, "binding") == NULL)
        return;
    sheet_step(sheet, "LAYER AND QUILT, EACH TOP");
    sheet_point(sheet, plan, "Layer backing, batting and top, baste them and quilt. Trim batting and backing level "
                             "with the top, corners square, and measure again: quilting draws a quilt in, and the "
                             "binding goes by what you measure then.");
}

static void show_binding(struct sheet *sheet, json_t *plan)
{
    json_t *binding = json_object_get(plan, "binding");
    if (binding == NULL)
        return;
    sheet_step(sheet, "BINDING, FOR EACH TOP");
    sheet_point(sheet, binding, "Once round the quilt is {finished_perimeter} finished; plus {for_the_ends} for the "
                                "ends, {length_wanted}.");
    sheet_point(sheet, binding, "Cut {strips:strip} across the cloth, each cut {strip_cut_width} wide, and join them "
                                "end to end with {joins:join} ({join}, {loss_per_join} lost in each): the run is "
                                "{joined_length} long, {spare} more than wanted.");
    sheet_point(sheet, binding, says(binding, "fold", "double")
                                    ? "Fold it double along its length, right side out, and press."
                                    : "It is sewn on single, its far edge turned under on the back.");
    json_t *across = json_object_get(binding, "across");
    if (across != NULL)
        sheet_point(sheet, across, "It is {folded_before_sewing} wide before sewing; with "
                                   "{front_finished} finished on the front, the back shows {back_finished} finished.");
}

void show_finishing(struct sheet *sheet, json_t *plan)
{
    show_borders(sheet, plan);
    show_batting(sheet, plan);
    show_plan_backing(sheet, plan);
    show_quilting(sheet, plan);
    show_binding(sheet, plan);
}
