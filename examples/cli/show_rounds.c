/* show_rounds.c - log cabins, frames, medallions and pieced borders as one works them.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdlib.h>

#include "look.h"
#include "sheet.h"

static bool has(json_t *object, const char *member)
{
    json_t *value = json_object_get(object, member);
    json_t *ticks = json_object_get(value, "ticks");
    return json_integer_value(ticks != NULL ? ticks : value) != 0 || json_is_true(value);
}

/* ---- log cabins -------------------------------------------------------------------------------------------------- */

static void show_rounds_that_fit(struct sheet *sheet, json_t *answer)
{
    json_t *fit = json_object_get(answer, "to_finish_as_wanted");
    if (fit == NULL)
        return;
    if (says(fit, "found", "log"))
        sheet_point(sheet, fit, "For a block {block_wanted_finished} wide finished in {rounds:round}, logs finish at "
                                "{log_finished}.");
    else
        sheet_point(sheet, fit, "Within a block {block_wanted_finished} wide finished, logs that finish at "
                                "{log_finished} make {rounds:round}; one round more would make "
                                "{with_one_round_more_finished} finished.");
    if (has(fit, "short_of_wanted_by"))
        sheet_point(sheet, fit, "The block comes out {block_becomes_finished} wide finished: {short_of_wanted_by} less "
                                "than wanted.");
    if (has(fit, "larger_than_wanted_by"))
        sheet_point(sheet, fit, "The block comes out {block_becomes_finished} wide finished: {larger_than_wanted_by} "
                                "more than wanted.");
    if ((has(fit, "short_of_wanted_by") || has(fit, "larger_than_wanted_by")) &&
        has(fit, "centre_that_would_come_out_finished"))
        sheet_point(sheet, fit, "With a centre {centre_that_would_come_out_finished} wide finished it would come out.");
}

static void show_strips(struct sheet *sheet, json_t *answer)
{
    json_t *list = json_object_get(answer, "strips");
    bool counted = has(answer, "cloth_usable_width");
    for (size_t i = 0; i < json_array_size(list); i++) {
        json_t *row = json_array_get(list, i);
        sheet_point(sheet, row, "Of the {fabric} fabrics: {logs:log}, strips cut {strip_cut_width} wide; end to end "
                                "{running_length}, the longest cut {longest_cut_length} long.");
        if (counted)
            sheet_under(sheet, row, "{strips:strip} across the cloth, {cloth_length} of it, cut without joins, the "
                                    "longest logs first. By length alone it would be {strips_by_length_alone}.");
    }
    if (counted)
        sheet_point(sheet, answer, "The cloth is {cloth_usable_width} wide without its selvages (usable).");
}

static void show_log(struct sheet *sheet, json_t *log)
{
    sheet_point(sheet, log, "At the {side}, {fabric} fabrics: cut {cut_length} long and {cut_width} wide, to finish "
                            "{finished_length} long.");
    if (json_is_true(json_object_get(log, "closes_round")))
        sheet_under(sheet, log, "The block must measure {unfinished_width_now} by {unfinished_height_now} unfinished "
                                "now: press, measure, and square it up before the next round.");
}

static void show_sewing(struct sheet *sheet, json_t *answer)
{
    json_t *logs = json_object_get(answer, "logs");
    json_int_t round = 0;
    sheet_step(sheet, "SEW, EACH BLOCK");
    for (size_t i = 0; i < json_array_size(logs); i++) {
        json_t *log = json_array_get(logs, i);
        json_int_t of = json_integer_value(json_object_get(log, "round"));
        if (of != round) {
            char *words = sheet_sentence(log, "Round {round}");
            sheet_line(sheet, words);
            free(words);
        }
        round = of;
        show_log(sheet, log);
    }
    sheet_point(sheet, answer, "Press each seam away from the centre, before the next log goes on.");
}

static const char *cabin_title(json_t *answer)
{
    if (says(answer, "order", "courthouse"))
        return "Courthouse steps of {rounds:round}, {finished_width} by {finished_height} finished, {unfinished_width} "
               "by {unfinished_height} unfinished.";
    if (says(answer, "order", "quarter"))
        return "A quarter log cabin of {rounds:round}, {finished_width} by {finished_height} finished, "
               "{unfinished_width} by {unfinished_height} unfinished.";
    return "A log cabin of {rounds:round}, {finished_width} by {finished_height} finished, {unfinished_width} by "
           "{unfinished_height} unfinished.";
}

void show_log_cabin(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, cabin_title(answer));
    show_rounds_that_fit(sheet, answer);
    sheet_point(sheet, answer, "Seam allowance {seam_allowance}. Sew a test block first.");
    sheet_point(sheet, answer, says(answer, "order", "quarter")
                                   ? "The first log of each round is of the first fabrics, the second of the second: "
                                     "light and dark, for instance."
                                   : "The first two logs of each round are of the first fabrics, the other two of the "
                                     "second: light and dark, for instance.");
    sheet_step(sheet, "CUT");
    sheet_point(sheet, answer, "For {blocks:block}: a centre cut {centre_cut_width} by {centre_cut_height} each, and "
                               "{logs_in_a_block:log} each.");
    show_strips(sheet, answer);
    show_sewing(sheet, answer);
}

/* ---- frames ------------------------------------------------------------------------------------------------------ */

static void show_corners(struct sheet *sheet, json_t *corners, const char *which)
{
    json_t *all = json_pack("{s:s}", "which", which);
    for (int i = 0; i < 4; i++) {
        char name[2] = { (char)('a' + i), '\0' };
        json_object_set(all, name, json_array_get(corners, (size_t)i));
    }
    sheet_under(sheet, all, "{which}, along and in: {a.x}, {a.y}; {b.x}, {b.y}; {c.x}, {c.y}; {d.x}, {d.y}.");
    json_decref(all);
}

static void show_template(struct sheet *sheet, json_t *answer, const char *member, const char *words)
{
    json_t *template = json_object_get(answer, member);
    sheet_point(sheet, answer, words);
    show_corners(sheet, json_object_get(template, "cut_corners"), "Cut corners");
    show_corners(sheet, json_object_get(template, "finished_corners"), "Finished corners");
}

void show_frame(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "A mitred frame {frame_finished_width} wide finished round an opening "
                             "{opening_finished_width} by {opening_finished_height} finished: {finished_width} by "
                             "{finished_height} finished, {unfinished_width} by {unfinished_height} unfinished.");
    sheet_point(sheet, answer, "Cut strips {strip_cut_width} wide. One strip {strip_length_for_all_four} long holds "
                               "all four pieces, each turned against the one before, ends at 45 degrees.");
    sheet_point(sheet, answer, "Top and bottom: long cut edge {top_cut_long_edge}, short cut edge "
                               "{top_cut_short_edge}.");
    sheet_point(sheet, answer, "Sides: long cut edge {side_cut_long_edge}, short cut edge {side_cut_short_edge}.");
    sheet_point(sheet, answer, "Stop each seam to the opening one allowance, {seam_allowance}, before the corner; then "
                               "sew the mitres from there outwards. Sew a test corner first.");
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Templates, measured along the long cut edge from its left tip, and in from that edge:");
    show_template(sheet, answer, "top_template", "Top and bottom.");
    show_template(sheet, answer, "side_template", "Sides.");
}

/* ---- medallions -------------------------------------------------------------------------------------------------- */

static void show_units(struct sheet *sheet, json_t *round)
{
    sheet_under(sheet, round, "{units:unit}, each {unit_unfinished_repeat} along the border by {unit_unfinished_depth} "
                              "unfinished ({unit_finished_repeat} by {unit_finished_depth} finished): "
                              "{units_in_each_side} in each side, {units_in_top_and_bottom_each} in top and bottom "
                              "each.");
    if (json_is_true(json_object_get(round, "comes_out"))) {
        sheet_under(sheet, round, "They come out. Sewn together, each side must measure {side_unfinished_length} long, "
                                  "top and bottom {top_unfinished_length} long, unfinished.");
        return;
    }
    sheet_under(sheet, round, "They do not come out: {left_over_in_each_side} is left in each side, "
                              "{left_over_in_top_and_bottom} in top and bottom, finished. Put a coping round before "
                              "them, or choose another repeat.");
}

/* One direction may need no strip at all. */
static void show_coping(struct sheet *sheet, json_t *round)
{
    bool side = has(round, "side_cut_width");
    bool top = has(round, "top_cut_width");
    if (side)
        sheet_under(sheet, round, "Sides: two strips cut {side_cut_width} wide and {side_cut_length} long "
                                  "({side_finished_width} wide finished).");
    if (top)
        sheet_under(sheet, round, "Top and bottom: two strips cut {top_cut_width} wide and {top_cut_length} long "
                                  "({top_finished_width} wide finished).");
    if (!side)
        sheet_under(sheet, round, "No strips at the sides.");
    if (!top)
        sheet_under(sheet, round, "No strips at top and bottom.");
    if (json_is_true(json_object_get(round, "sides_differ_from_top")))
        sheet_under(sheet, round, "Width and height need different strips: mind which is which.");
}

static const char *title_of(json_t *round)
{
    if (says(round, "kind", "pieced"))
        return "Round {number}, pieced border.";
    return says(round, "kind", "coping") ? "Round {number}, coping strips." : "Round {number}, plain border.";
}

static void show_round(struct sheet *sheet, json_t *round)
{
    sheet_point(sheet, round, title_of(round));
    if (says(round, "kind", "pieced"))
        show_units(sheet, round);
    else
        show_coping(sheet, round);
    if (has(round, "corner_squares"))
        sheet_under(sheet, round, "In the corners, {corner_squares} pieces cut {corner_cut_width} by "
                                  "{corner_cut_height}.");
    else
        sheet_under(sheet, round, "Sides first; top and bottom run through the corners.");
    sheet_under(sheet, round, "The quilt is then {finished_width_after} by {finished_height_after} finished.");
}

void show_medallion(struct sheet *sheet, json_t *answer)
{
    json_t *rounds = json_object_get(answer, "rounds");
    sheet_say(sheet, answer, "From a centre {centre_finished_width} by {centre_finished_height} finished to a quilt "
                             "{finished_width} by {finished_height} finished, {unfinished_width} by "
                             "{unfinished_height} unfinished.");
    sheet_point(sheet, answer, "Seam allowance {seam_allowance}. Lengths are the arithmetic: before each round, "
                               "measure your top through the middle and ease it to the size said here, above all before a "
                               "pieced round.");
    for (size_t i = 0; i < json_array_size(rounds); i++)
        show_round(sheet, json_array_get(rounds, i));
    if (has(answer, "rounds_that_leave_a_rest"))
        sheet_point(sheet, answer, "{rounds_that_leave_a_rest:round} with something left over: see above.");
}

/* ---- pieced borders ---------------------------------------------------------------------------------------------- */

static void show_spacers(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, "With {spacers:spacer}: {units:unit}, and spacers that share {spacers_share}: each "
                               "finishes at {spacer_finished}, cut {spacer_cut}.");
    if (has(answer, "left_over"))
        sheet_under(sheet, answer, "{left_over} is left over.");
    if (has(answer, "too_long_by"))
        sheet_under(sheet, answer, "Rounded so, they are {too_long_by} too long together.");
}

static void show_repeat(struct sheet *sheet, json_t *answer)
{
    bool out = json_is_true(json_object_get(answer, "comes_out"));
    if (out)
        sheet_say(sheet, answer, "{units_that_fit:unit} of {repeat_finished} fill {side_finished} finished exactly; "
                                 "each is {unit_unfinished} unfinished.");
    else
        sheet_say(sheet, answer, "{units_that_fit:unit} of {repeat_finished} leave {they_leave} of {side_finished}, "
                                 "all finished; {units_that_reach} would pass it by {they_pass_it_by}. A unit is "
                                 "{unit_unfinished} unfinished.");
    if (has(answer, "spacers"))
        show_spacers(sheet, answer);
    if (!out && has(answer, "units_that_fit"))
        sheet_point(sheet, answer, "Or a repeat of {repeat_that_would_fill_it_finished} finished for "
                                   "{units_that_fit:unit}.");
    if (!out)
        sheet_point(sheet, answer, "Or a repeat of {repeat_that_would_just_reach_finished} finished for "
                                   "{units_that_reach:unit}.");
}

static void show_common(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "A repeat of {repeat_finished} finished divides both {side_finished} and "
                             "{other_side_finished} finished: {units_in_the_side:unit} and "
                             "{units_in_the_other_side:unit}.");
    sheet_point(sheet, answer, "The largest length that divides both is {largest_common_length}; the repeat is one of "
                               "{parts_of_it:part} of it.");
}

static void show_point(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, has(answer, "left_over")
                                 ? "{squares_in_a_run:square} on point, {diagonal_finished} from tip to tip finished, "
                                   "in a side of {side_finished} finished; {left_over} is left over."
                                 : "{squares_in_a_run:square} on point, {diagonal_finished} from tip to tip finished, "
                                   "fill a side of {side_finished} finished.");
    sheet_point(sheet, answer, "Squares: cut strips {square_cut} wide, and from them {squares:square} cut "
                               "{square_cut} ({square_finished} finished).");
    sheet_point(sheet, answer, "Between them, {setting_triangles:triangle}: {setting_squares_to_cut:square} cut "
                               "{setting_square_cut}, each cut twice corner to corner. Their long edges lie on the "
                               "edge of the border, with the grain.");
    sheet_point(sheet, answer, "At the ends, {end_triangles:triangle}: {end_squares_to_cut:square} cut "
                               "{end_square_cut}, each cut once corner to corner.");
    sheet_point(sheet, answer, "The border is {border_unfinished_depth} deep unfinished. Counted for {runs:run}. Sew a "
                               "test piece first: cut edges on the diagonal stretch.");
}

void show_pieced_border(struct sheet *sheet, json_t *answer)
{
    if (says(answer, "way", "squares on point"))
        show_point(sheet, answer);
    else if (says(answer, "way", "both sides"))
        show_common(sheet, answer);
    else
        show_repeat(sheet, answer);
}
