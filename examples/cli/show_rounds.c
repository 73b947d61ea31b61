/* show_rounds.c - log cabins, frames, medallions and pieced borders as one works them.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdlib.h>

#include <muslin/muslin.h>

#include "look.h"
#include "sheet.h"

static bool has(json_t *object, const char *member)
{
    json_t *value = json_object_get(object, member);
    json_t *ticks = json_object_get(value, "ticks");
    return json_integer_value(ticks != NULL ? ticks : value) != 0 || json_is_true(value);
}

static json_int_t count_of(json_t *object, const char *member)
{
    return json_integer_value(json_object_get(object, member));
}

/* The sentence for cloth that is said in yards, or the one that adds what a shop sells. */
static const char *across(json_t *row, const char *yards, const char *with_shop)
{
    return in_yards(row, "cloth_length") ? yards : with_shop;
}

void show_nothing_allowed(struct sheet *sheet)
{
    sheet_point(sheet, NULL, "Nothing is allowed for straightening the cloth or for shrinkage: buy more.");
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
        if (!counted)
            continue;
        bool certain = count_of(row, "strips") == count_of(row, "strips_by_length_alone");
        sheet_under(sheet, row, across(row, certain ? "{strips:strip} across the cloth, {cloth_length} of it."
                                                    : "At most {strips:strip} across the cloth, {cloth_length} of it.",
                                       certain ? "{strips:strip} across the cloth, {cloth_length} of it "
                                                 "({cloth_to_buy} in the shop)."
                                               : "At most {strips:strip} across the cloth, {cloth_length} of it "
                                                 "({cloth_to_buy} in the shop)."));
        sheet_under(sheet, row, certain ? "Cut without joins, the logs sewn last first."
                                        : "So many when cut without joins, the logs sewn last first, each from the "
                                          "strip at hand while it reaches, else from a new one. By length alone it "
                                          "would be {strips_by_length_alone}; fewer can never do.");
    }
    if (!counted)
        return;
    sheet_point(sheet, answer, "The cloth is {cloth_usable_width} wide without its selvages (usable).");
    show_nothing_allowed(sheet);
}

static void show_centres(struct sheet *sheet, json_t *answer)
{
    json_t *centres = json_object_get(answer, "centres");
    sheet_point(sheet, answer, "For {blocks:block}: a centre cut {centre_cut_width} by {centre_cut_height} each, and "
                               "{logs_in_a_block:log} each.");
    if (centres == NULL)
        return;
    sheet_under(sheet, centres, across(centres,
                                       "For the centres, {strips:strip} cut {strip_cut_width} wide across the cloth, "
                                       "{cloth_length} of it; a strip holds {from_each_strip}.",
                                       "For the centres, {strips:strip} cut {strip_cut_width} wide across the cloth, "
                                       "{cloth_length} of it ({cloth_to_buy} in the shop); a strip holds "
                                       "{from_each_strip}."));
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
    sheet_point(sheet, answer, "Press each seam away from the centre, before the next log goes on.");
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
    show_centres(sheet, answer);
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

/* What lies on each of the strips across the cloth. */
static const char *on_each_strip(json_t *strips, bool alike)
{
    switch (count_of(strips, "strips")) {
    case 1:
        return "all four pieces from it";
    case 2:
        return alike ? "two pieces from each" : "a top or bottom and a side from each";
    case 3:
        return "a longer piece from each of two, both shorter pieces from the third";
    default:
        return "a piece from each";
    }
}

static void show_frame_strips(struct sheet *sheet, json_t *answer, bool alike)
{
    json_t *strips = json_object_get(answer, "across_the_cloth");
    sheet_point(sheet, answer, "Cut strips {strip_cut_width} wide, and from them the pieces, each turned against the "
                               "one before, ends at 45 degrees. One strip {strip_length_for_all_four} long holds all "
                               "four, cut as below.");
    if (strips == NULL)
        return;
    if (count_of(strips, "strips") == 0) {
        sheet_under(sheet, answer, "A piece is longer than a strip across cloth {cloth_usable_width} wide (usable): "
                                   "cut the strip along the cloth.");
        return;
    }
    json_object_set_new(strips, "each", json_string(on_each_strip(strips, alike)));
    json_object_set(strips, "usable", json_object_get(answer, "cloth_usable_width"));
    sheet_under(sheet, strips, across(strips,
                                      "Across cloth {usable} wide without its selvages (usable) it takes "
                                      "{strips:strip}, {cloth_length} of it: {each}.",
                                      "Across cloth {usable} wide without its selvages (usable) it takes "
                                      "{strips:strip}, {cloth_length} of it ({cloth_to_buy} in the shop): {each}."));
    if (count_of(strips, "strips") > 1)
        sheet_under(sheet, answer, "Or cut the one strip along the cloth.");
    show_nothing_allowed(sheet);
}

void show_frame(struct sheet *sheet, json_t *answer)
{
    bool alike = json_is_true(json_object_get(answer, "all_four_alike"));
    sheet_say(sheet, answer, "A mitred frame {frame_finished_width} wide finished round an opening "
                             "{opening_finished_width} by {opening_finished_height} finished: {finished_width} by "
                             "{finished_height} finished, {unfinished_width} by {unfinished_height} unfinished.");
    sheet_point(sheet, answer, "The piece inside must be {opening_unfinished_width} by {opening_unfinished_height} "
                               "unfinished. Sew a test corner first.");
    show_frame_strips(sheet, answer, alike);
    sheet_point(sheet, answer, alike ? "All four pieces: long cut edge {top_cut_long_edge}, short cut edge "
                                       "{top_cut_short_edge}."
                                     : "Top and bottom: long cut edge {top_cut_long_edge}, short cut edge "
                                       "{top_cut_short_edge}.");
    if (!alike)
        sheet_point(sheet, answer, "Sides: long cut edge {side_cut_long_edge}, short cut edge {side_cut_short_edge}.");
    if (has(answer, "cut_edges_are_rounded"))
        sheet_under(sheet, answer, "These are rounded, to be cut with a ruler. The exact shape is that of the "
                                   "templates below: trim the tips to it, as much at both ends.");
    sheet_point(sheet, answer, "Stop each seam to the opening one allowance, {seam_allowance}, before the corner; then "
                               "sew the mitres from there outwards.");
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Templates, the exact shape, measured along the long cut edge from its left tip, and in "
                             "from that edge:");
    show_template(sheet, answer, "top_template", alike ? "All four pieces." : "Top and bottom.");
    if (!alike)
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
static void show_plain_strips(struct sheet *sheet, json_t *round)
{
    bool side = has(round, "side_cut_width");
    bool top = has(round, "top_cut_width");
    bool coping = says(round, "kind", "coping");
    if (side)
        sheet_under(sheet, round, coping ? "Sides: two strips cut {side_cut_width_to_trim} wide, to be trimmed, and as "
                                           "long as your top measures. By the arithmetic they are {side_cut_width} "
                                           "wide and {side_cut_length} long ({side_finished_width} wide finished)."
                                         : "Sides: two strips cut {side_cut_width} wide and {side_cut_length} long "
                                           "({side_finished_width} wide finished).");
    if (top)
        sheet_under(sheet, round, coping ? "Top and bottom: two strips cut {top_cut_width_to_trim} wide, to be "
                                           "trimmed, and as long as your top then measures. By the arithmetic they "
                                           "are {top_cut_width} wide and {top_cut_length} long ({top_finished_width} "
                                           "wide finished)."
                                         : "Top and bottom: two strips cut {top_cut_width} wide and {top_cut_length} "
                                           "long ({top_finished_width} wide finished).");
    if (!side)
        sheet_under(sheet, round, "No strips at the sides.");
    if (!top)
        sheet_under(sheet, round, "No strips at top and bottom.");
    if (json_is_true(json_object_get(round, "sides_differ_from_top")))
        sheet_under(sheet, round, "Width and height need different strips: mind which is which.");
}

/* Coping strips take up what the measured top is off; a plain border follows the measured top. */
static void show_fitting(struct sheet *sheet, json_t *round)
{
    if (says(round, "kind", "coping"))
        sheet_under(sheet, round, "Sew them on, then trim the top, as much on opposite sides, to "
                                  "{unfinished_width_after} by {unfinished_height_after} unfinished: the pieced round "
                                  "is made for that.");
    else if (says(round, "kind", "plain"))
        sheet_under(sheet, round, "Cut the strips as long as your top measures through the middle, and ease its edges "
                                  "to them.");
}

static void show_corners_of(struct sheet *sheet, json_t *round)
{
    if (!has(round, "corner_squares")) {
        sheet_under(sheet, round, "Sides first; top and bottom run through the corners.");
        return;
    }
    sheet_under(sheet, round, "In the corners, {corner_squares} pieces cut {corner_cut_width} by {corner_cut_height}. "
                              "Sides first; sew a corner piece to each end of top and bottom, which are then "
                              "{unfinished_width_after} long unfinished, and sew them on.");
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
        show_plain_strips(sheet, round);
    show_corners_of(sheet, round);
    show_fitting(sheet, round);
    sheet_under(sheet, round, "The top is then {finished_width_after} by {finished_height_after} finished "
                              "({unfinished_width_after} by {unfinished_height_after} unfinished).");
}

void show_medallion(struct sheet *sheet, json_t *answer)
{
    json_t *rounds = json_object_get(answer, "rounds");
    sheet_say(sheet, answer, "From a centre {centre_finished_width} by {centre_finished_height} finished to a top "
                             "{finished_width} by {finished_height} finished, {unfinished_width} by "
                             "{unfinished_height} unfinished.");
    if (has(answer, "units"))
        sheet_point(sheet, answer, "Sew one unit of each pieced border first, and measure it.");
    sheet_point(sheet, answer, "Seam allowance {seam_allowance}. Lengths are the arithmetic: measure your top through "
                               "the middle before each round.");
    for (size_t i = 0; i < json_array_size(rounds); i++)
        show_round(sheet, json_array_get(rounds, i));
    if (has(answer, "rounds_that_leave_a_rest"))
        sheet_point(sheet, answer, "{rounds_that_leave_a_rest:round} with something left over: see above.");
}

/* ---- pieced borders ---------------------------------------------------------------------------------------------- */

static void show_spacers(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, "With {spacers:spacer}: {units:unit}, and spacers that share {spacers_share}. Along the "
                               "border each finishes at {spacer_finished} and is cut {spacer_cut}; the other way, cut "
                               "it as deep as a unit is unfinished.");
    if (has(answer, "left_over"))
        sheet_under(sheet, answer, "{left_over} is left over.");
    if (has(answer, "too_long_by"))
        sheet_under(sheet, answer, "Rounded so, they are {too_long_by} too long together.");
}

/* A repeat that would come out, as near as rounding lets it. */
static void show_other_repeat(struct sheet *sheet, json_t *other)
{
    if (!has(other, "rounded"))
        sheet_point(sheet, other, "Or {units:unit} with a repeat of {repeat_finished} finished.");
    else if (has(other, "short_by"))
        sheet_point(sheet, other, "Or {units:unit} with a repeat of {repeat_finished} finished: together {short_by} "
                                  "short of the side. Exactly, the repeat is {side_finished} divided by {units}, "
                                  "{repeat_exactly_finished}.");
    else
        sheet_point(sheet, other, "Or {units:unit} with a repeat of {repeat_finished} finished: together {too_long_by} "
                                  "too long. Exactly, the repeat is {side_finished} divided by {units}, "
                                  "{repeat_exactly_finished}.");
}

static void show_repeat(struct sheet *sheet, json_t *answer)
{
    bool out = json_is_true(json_object_get(answer, "comes_out"));
    if (out)
        sheet_say(sheet, answer, "{units_that_fit:unit} of {repeat_finished} fill {side_finished} finished exactly; "
                                 "each is {unit_unfinished} unfinished along the border.");
    else
        sheet_say(sheet, answer, "{units_that_fit:unit} of {repeat_finished} leave {they_leave} of {side_finished}, "
                                 "all finished; {units_that_reach} would pass it by {they_pass_it_by}. A unit is "
                                 "{unit_unfinished} unfinished along the border.");
    if (has(answer, "spacers"))
        show_spacers(sheet, answer);
    if (!out && has(answer, "units_that_fit"))
        show_other_repeat(sheet, json_object_get(answer, "with_the_units_that_fit"));
    if (!out)
        show_other_repeat(sheet, json_object_get(answer, "with_the_units_that_reach"));
}

static void show_common(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "A repeat of {repeat_finished} finished divides both {side_finished} and "
                             "{other_side_finished} finished: {units_in_the_side:unit} and "
                             "{units_in_the_other_side:unit}. A unit is {unit_unfinished} unfinished along the "
                             "border.");
    if (count_of(answer, "parts_of_it") == 1)
        sheet_point(sheet, answer, "No longer repeat divides both.");
    else
        sheet_point(sheet, answer, count_of(answer, "parts_of_it") == 2
                                       ? "The largest length that divides both is {largest_common_length}; the repeat "
                                         "is half of it."
                                       : "The largest length that divides both is {largest_common_length}; the repeat "
                                         "is that divided by {parts_of_it}.");
}

/* A thread, or more where one can set a needle by it. */
enum { A_THREAD = MUSLIN_TICKS_PER_INCH / 128 };

static void show_adjusted_seams(struct sheet *sheet, json_t *answer, bool longer)
{
    bool thread = json_integer_value(part(answer, "each_seam_by", "ticks")) < A_THREAD;
    json_t *said = json_copy(answer);
    char *amount = sheet_sentence(answer, thread ? "a thread" : "{each_seam_by}");
    json_object_set_new(said, "amount", json_string(amount));
    json_object_set_new(said, "way", json_string(longer ? "deeper" : "less deep"));
    json_object_set_new(said, "off", json_string(longer ? "too long" : "too short"));
    json_object_set(said, "by", json_object_get(answer, longer ? "run_as_cut_longer_by" : "run_as_cut_shorter_by"));
    sheet_under(sheet, said, "Rounded so, a run comes out {by} {off}: take all four seams of every square {amount} "
                             "{way}, until a run measures {run_finished} finished, or try a finer --to.");
    free(amount);
    json_decref(said);
}

/* Squares rounded up make the run longer; where that is more than one can ease, it is said. */
static bool show_run(struct sheet *sheet, json_t *answer)
{
    bool longer = has(answer, "run_as_cut_longer_by");
    bool off = longer || has(answer, "run_as_cut_shorter_by");
    if (off)
        show_adjusted_seams(sheet, answer, longer);
    return off;
}

static void show_point(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, has(answer, "left_over")
                                 ? "{squares_in_a_run:square} on point, {diagonal_finished} from tip to tip finished, "
                                   "in a side of {side_finished} finished; {left_over} is left over."
                                 : "{squares_in_a_run:square} on point, {diagonal_finished} from tip to tip finished, "
                                   "fill a side of {side_finished} finished.");
    sheet_point(sheet, answer, "Counted for {runs:run}. Sew a test piece first: cut edges on the diagonal stretch.");
    sheet_point(sheet, answer, "Squares: cut strips {square_cut} wide, and from them {squares:square} cut "
                               "{square_cut} ({square_finished} finished).");
    bool off = show_run(sheet, answer);
    sheet_point(sheet, answer, "Between them, {setting_triangles:triangle}: {setting_squares_to_cut:square} cut "
                               "{setting_square_cut}, each cut twice corner to corner. Their long edges lie on the "
                               "edge of the border, with the grain.");
    sheet_point(sheet, answer, "At the ends, {end_triangles:triangle}: {end_squares_to_cut:square} cut "
                               "{end_square_cut}, each cut once corner to corner.");
    sheet_point(sheet, answer, off ? "Trim the border straight, {seam_allowance} outside the tips of the squares. Once "
                                     "the seams are adjusted so that a square is {diagonal_finished} from tip to tip "
                                     "finished, it must be {border_unfinished_depth} deep unfinished."
                                   : "Trim the border straight, {seam_allowance} outside the tips of the squares: it "
                                     "must be {border_unfinished_depth} deep unfinished.");
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
