/* show_plan.c - a plan as a written pattern, in the order of the work.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every size says cut, unfinished or finished. All figures come from the answer; nothing is worked out here. */
#include <stdbool.h>
#include <string.h>

#include "sheet.h"

/* ---- what is taken for granted ---------------------------------------------------------------------------------- */

static void show_cutting_habits(struct sheet *sheet, json_t *plan)
{
    sheet_point(sheet, plan, any(plan, "assumed", "end_trim")
                                 ? "Each end of a set is squared by trimming {assumed.end_trim} off it."
                                 : "Nothing is trimmed off the ends of a set. If yours need it, plan with --trim.");
    if (any(plan, "assumed", "cut_from_one_end"))
        sheet_point(sheet, plan, "Segments are cut straight through from one end.");
    else
        sheet_point(sheet, plan, any(plan, "assumed", "fold_clear")
                                     ? "Segments are cut from both ends towards the middle, where {assumed.fold_clear} "
                                       "is kept clear of cuts because of the fold."
                                     : "Segments are cut from both ends towards the middle; nothing is kept clear at "
                                       "the fold.");
    if (any(plan, "assumed", "resquare_loss") && any(plan, "assumed", "resquare_every"))
        sheet_point(sheet, plan, "The cut edge is squared again after every {assumed.resquare_every:cut}, which takes "
                                 "{assumed.resquare_loss} each time.");
}

static void show_assumed(struct sheet *sheet, json_t *plan)
{
    sheet_heading(sheet, "WHAT THIS PLAN TAKES FOR GRANTED");
    sheet_point(sheet, plan, "{assumed.strips_in_hand:strip} cut {assumed.strip_cut} wide, each at least "
                             "{assumed.usable_length} long without its selvages (usable). Measure yours: a set is only "
                             "as long as its shortest strip.");
    if (!says(json_object_get(plan, "assumed"), "strip_edge", "straight"))
        sheet_point(sheet, plan, "The strips are pinked ({assumed.strip_edge}); line up the {assumed.line_up} "
                                 "throughout. The cut width above is measured there.");
    sheet_point(sheet, plan, any(plan, "assumed", "take_up_per_seam")
                                 ? "Seam allowance {assumed.seam_allowance} on each edge, and "
                                   "{assumed.take_up_per_seam} more for fold and thread at every seam."
                                 : "Seam allowance {assumed.seam_allowance} on each edge, fold and thread included: "
                                   "sew a thread's width inside it if your sets come out narrow.");
    show_cutting_habits(sheet, plan);
    if (json_array_size(json_object_get(plan, "buy")) > 0) {
        sheet_point(sheet, plan, "Cloth for borders and binding is {assumed.cloth_usable_width} wide without its "
                                 "selvages (usable) and sold in steps of {assumed.purchase_step}.");
        sheet_point(sheet, plan, any(plan, "assumed", "shrinkage") || any(plan, "assumed", "extra_share")
                                     ? "What to buy allows for {assumed.shrinkage} of shrinking and "
                                       "{assumed.extra_share} extra."
                                     : "What to buy allows nothing for shrinking and nothing extra.");
    }
    sheet_say(sheet, plan, "If any of this differs for you, plan again with your own figures before you cut.");
}

/* ---- sets ------------------------------------------------------------------------------------------------------- */

static void show_sorting(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "SORT AND LABEL");
    sheet_point(sheet, plan, "Sort the strips into {sets.sets:pile} of {sets.strips_per_set}, "
                             "{sets.strips_used:strip} in all, and lay each pile out in the order you like.");
    sheet_point(sheet, plan, "Number the piles. On the first strip of each pile, at both ends, pin a label with the "
                             "number and the word TOP, so that no set gets turned by mistake.");
    if (any(plan, "left_over", "strips"))
        sheet_point(sheet, plan, "{left_over.strips:strip} stay out of this plan; choose them now.");
}

static void show_trio(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "TEST YOUR SEAM");
    sheet_point(sheet, plan, "Sew three short pieces, cut {assumed.strip_cut} wide like the strips, side by side, and "
                             "press them. From raw edge to raw edge they must measure {check.trio_unfinished_width} "
                             "unfinished, and the middle one must show {check.trio_centre_finished_width} finished. If "
                             "not, move the needle or the guide and try again.");
    if (any(plan, "check", "error_of_a_set"))
        sheet_point(sheet, plan, "It matters: {check.error_per_seam} too much or too little in every seam makes a set "
                                 "{check.error_of_a_set} too narrow or too wide.");
}

static void show_pressing(struct sheet *sheet, json_t *plan)
{
    bool to_top = any(plan, "sets", "press_towards_top");
    bool to_bottom = any(plan, "sets", "press_towards_bottom");
    sheet_point(sheet, plan, "Press every seam flat as sewn, then over to one side, without steam or pulling:");
    if (to_top)
        sheet_under(sheet, plan, "{sets.press_towards_top:set}: towards the strip labelled TOP");
    if (to_bottom)
        sheet_under(sheet, plan, "{sets.press_towards_bottom:set}: away from the strip labelled TOP");
    if (!to_top && !to_bottom)
        sheet_under(sheet, plan, "these are too many sets to list; plan fewer tops at a time to see them");
}

static void show_sewing(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "SEW AND PRESS THE SETS");
    if (!any(plan, "sets", "seams_per_set")) {
        sheet_point(sheet, plan, "A set is a single strip here: there is nothing to sew yet.");
        return;
    }
    sheet_point(sheet, plan, "Sew the strips of each pile long side to long side, {sets.seams_per_set:seam} a set: in "
                             "pairs first, then the pairs together, each seam begun at the other end than the one "
                             "before, so that the set stays straight.");
    show_pressing(sheet, plan);
    sheet_point(sheet, plan, "Each set must measure {check.set_unfinished_width} unfinished across the strips, at both "
                             "ends and in the middle ({sets.finished_width} finished, {sets.strip_finished_width} of "
                             "each strip). Measure before you cut. If your sets differ, muslin calibrate says what to "
                             "change, or how to carry on with them.");
}

/* ---- segments and blocks ---------------------------------------------------------------------------------------- */

static void show_cutting(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "CUT THE SEGMENTS");
    sheet_point(sheet, plan, "Across each set, cut {segments.from_each_set:segment}, each cut {segments.segment_cut} "
                             "wide ({segments.segment_finished_width} finished).");
    if (!any(plan, "assumed", "cut_from_one_end"))
        sheet_point(sheet, plan, "Square one end and cut {segments.from_each_end} from it; turn the mat, not the "
                                 "set, square the other end and cut {segments.from_each_end} from there. The fold "
                                 "stays in the piece left over.");
    else
        sheet_point(sheet, plan, "Square one end and cut {segments.from_each_end} from it.");
    sheet_point(sheet, plan, "Keep the segments of each set in one stack, the TOP strips together: "
                             "{segments.stacks:stack}, numbered like the sets. Pin the label to the TOP edge of the "
                             "stack.");
    if (any(plan, "segments", "left"))
        sheet_point(sheet, plan, "The plan uses {segments.used:segment}: {segments.from_the_first_stacks} from each of "
                                 "the first {segments.first_stacks:stack}, {segments.from_each_other_stack} from each "
                                 "other. {segments.left:segment} stay over.");
}

static void show_group(struct sheet *sheet, json_t *group)
{
    json_t *first = json_object_get(group, "first_block");
    json_t *last = json_object_get(group, "last_block");
    sheet_point(sheet, group, json_equal(first, last)
                                  ? "Block {first_block}: one segment from each of {stacks:stack}, left to right."
                                  : "Blocks {first_block} to {last_block}: one segment from each of "
                                    "{stacks:stack}, left to right.");
    if (json_array_size(json_object_get(group, "turn_end_for_end")) > 0)
        sheet_under(sheet, group, "Turn {turn_end_for_end:segment} of the block end for end, TOP strip to the "
                                  "bottom, so that the seams nest.");
    json_t *places = json_object_get(group, "not_nesting");
    for (size_t i = 0; i < json_array_size(places); i++) {
        json_t *place = json_pack("{s:O}", "segments", json_array_get(places, i));
        sheet_under(sheet, place, "The seams of {segments:segment} do not nest: match them with a pin.");
        json_decref(place);
    }
    if (json_is_true(json_object_get(group, "repeats_a_set")))
        sheet_under(sheet, group, "These blocks hold two segments of one set.");
}

static void show_pairing(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "JOIN SEGMENTS INTO BLOCKS");
    json_t *groups = part(plan, "blocks", "groups");
    sheet_point(sheet, plan, "{blocks.blocks:block}, each of {blocks.segments_per_block:segment} sewn side by side, "
                             "TOP strips up unless told otherwise:");
    for (size_t i = 0; i < json_array_size(groups); i++)
        show_group(sheet, json_array_get(groups, i));
    if (json_array_size(groups) == 0)
        sheet_under(sheet, plan, "{blocks.different_pairings} different pairings are too many to list; plan fewer tops "
                                 "at a time to see them.");
    if (json_integer_value(part(plan, "blocks", "segments_per_block")) > 1)
        sheet_point(sheet, plan, "Press the seams between segments to the left in every block.");
    sheet_point(sheet, plan, "Each block must measure {blocks.unfinished_width} wide and {blocks.unfinished_height} "
                             "high unfinished ({blocks.finished_width} by {blocks.finished_height} finished). Measure "
                             "the first one before you sew the others.");
}

/* ---- the top -----------------------------------------------------------------------------------------------------*/

static void show_top(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "LAY OUT AND JOIN THE TOP");
    sheet_point(sheet, plan, "{top.rows:row} of {top.columns:block}: {top.blocks:block} for each top.");
    if (any(plan, "top", "blocks_turned"))
        sheet_point(sheet, plan, says(json_object_get(plan, "top"), "turning", "half")
                                     ? "Turn every other block upside down, like the squares of a chessboard: "
                                       "{top.blocks_turned} are turned."
                                     : "Turn every other block a quarter to the right, like the squares of a "
                                       "chessboard: {top.blocks_turned} are turned.");
    sheet_point(sheet, plan, json_integer_value(part(plan, "top", "tops")) > 1
                                 ? "Deal the blocks evenly to the tops, and spread blocks of the same stacks over "
                                   "each, so that equal ones do not touch."
                                 : "Spread blocks of the same stacks over the top, so that equal ones do not touch.");
    draw_layout(sheet, plan);
    sheet_point(sheet, plan, "Join the blocks into rows. Press the seams of odd rows to the left and of even rows to "
                             "the right, so that they nest where rows meet; then join the rows.");
    sheet_point(sheet, plan, "Each top measures {top.unfinished_width} by {top.unfinished_length} unfinished "
                             "({top.finished_width} by {top.finished_length} finished).");
}

/* ---- buying, left over, near the edge --------------------------------------------------------------------------- */

static void show_buying_line(struct sheet *sheet, json_t *line)
{
    bool numbered = json_object_get(line, "number") != NULL;
    sheet_point(sheet, line, numbered ? "{for} {number}: {needed} needed, buy {bought}"
                                      : "{for}: {needed} needed, buy {bought}");
    if (!json_equal(json_object_get(line, "needed"), json_object_get(line, "with_shrinkage_and_extra")))
        sheet_under(sheet, line, "({with_shrinkage_and_extra} with shrinking and extra)");
}

static void show_buying(struct sheet *sheet, json_t *plan)
{
    json_t *lines = json_object_get(plan, "buy");
    if (json_array_size(lines) == 0)
        return;
    sheet_heading(sheet, "WHAT TO BUY");
    sheet_say(sheet, plan, "Besides the strips, for {top.tops:top}:");
    for (size_t i = 0; i < json_array_size(lines); i++)
        show_buying_line(sheet, json_array_get(lines, i));
    if (json_object_get(plan, "batting") != NULL)
        sheet_point(sheet, plan, "batting: as its step says, for {top.tops:top}");
}

static void show_left_over(struct sheet *sheet, json_t *plan)
{
    sheet_heading(sheet, "WHAT IS LEFT OVER");
    sheet_point(sheet, plan, "{left_over.strips:strip} and {left_over.segments:segment}; of each set a piece "
                             "{left_over.of_each_set} long, fold included.");
    sheet_point(sheet, plan, "All the strips in hand make {left_over.tops_from_all_strips:top}; one more would take "
                             "{left_over.strips_missing_for_one_more_top:more strip}.");
}

static void show_edges(struct sheet *sheet, json_t *plan)
{
    sheet_heading(sheet, "HOW NEAR THE EDGE THIS IS");
    sheet_point(sheet, plan, any(plan, "edges", "strip_may_be_shorter_by")
                                 ? "Each strip may be {edges.strip_may_be_shorter_by} shorter than planned before a "
                                   "set loses segments: down to {edges.shortest_strip_that_gives_as_many} usable."
                                 : "Each strip may be {edges.strip_may_be_shorter_by} shorter than planned: below "
                                   "{edges.shortest_strip_that_gives_as_many} usable, a set loses segments. Measure "
                                   "every strip before you sew.");
    sheet_point(sheet, plan, "Strips longer by {edges.strip_longer_for_more_by} would give more segments.");
    if (part(plan, "edges", "binding_strips_may_be_shorter_by") != NULL)
        sheet_point(sheet, plan, "The binding's strips may each be {edges.binding_strips_may_be_shorter_by} shorter "
                                 "before one more is needed.");
    if (part(plan, "edges", "backing_cloth_may_be_narrower_by") != NULL)
        sheet_point(sheet, plan, "The backing cloth may be {edges.backing_cloth_may_be_narrower_by} narrower before "
                                 "its layout changes.");
}

static void show_section(struct sheet *sheet, json_t *sentences, const char *heading)
{
    if (json_array_size(sentences) == 0)
        return;
    sheet_heading(sheet, heading);
    show_sentences(sheet, sentences);
}

/* ---- the plan --------------------------------------------------------------------------------------------------- */

static void show_opening(struct sheet *sheet, json_t *plan)
{
    sheet_title(sheet, plan, "A STRIP QUILT FROM A BUNDLE OF {assumed.strips_in_hand} STRIPS");
    sheet_say(sheet, plan, "{top.tops:top} of {top.columns} by {top.rows} blocks, each {quilt_finished_width} wide and "
                           "{quilt_finished_length} long finished, borders included.");
    sheet_gap(sheet);
    sheet_say(sheet, plan, "Three words are never mixed here. Cut is the size as it leaves the cutting table; "
                           "unfinished is the size of something sewn whose outer seam allowances are still raw; "
                           "finished is the size seen in the quilt. Read the whole plan once before you cut.");
}

void show_plan(struct sheet *sheet, json_t *plan)
{
    show_opening(sheet, plan);
    show_assumed(sheet, plan);
    show_sorting(sheet, plan);
    show_trio(sheet, plan);
    show_sewing(sheet, plan);
    show_cutting(sheet, plan);
    show_pairing(sheet, plan);
    show_top(sheet, plan);
    show_borders(sheet, plan);
    show_batting(sheet, plan);
    show_plan_backing(sheet, plan);
    show_binding(sheet, plan);
    show_buying(sheet, plan);
    show_left_over(sheet, plan);
    show_edges(sheet, plan);
    show_section(sheet, json_object_get(plan, "warnings"), "WORTH KNOWING");
    show_section(sheet, json_object_get(plan, "cautions"), "TAKE CARE");
}
