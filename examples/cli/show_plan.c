/* show_plan.c - a plan as a written pattern, in the order of the work.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every size says cut, unfinished or finished. All figures come from the answer; nothing is worked out here. */
#include <stdbool.h>
#include <stdio.h>
#include <string.h>

#include "look.h"
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

static void show_edges_of_strips(struct sheet *sheet, json_t *plan)
{
    if (says(json_object_get(plan, "assumed"), "strip_edge", "straight"))
        sheet_point(sheet, plan, "The edges of the strips are straight. If yours are pinked, measure from tip to tip "
                                 "and line up the tips.");
    else
        sheet_point(sheet, plan, "The strips are pinked: measure them from {assumed.line_up_one} to "
                                 "{assumed.line_up_one}, as the cut width above is, and line up the {assumed.line_up} "
                                 "throughout.");
    sheet_point(sheet, plan, says(json_object_get(plan, "assumed"), "strips_care", "unwashed")
                                 ? "The strips are unwashed; do not wash them, they fray and shrink."
                                 : "The strips are washed: measure each of them again.");
}

static void show_assumed(struct sheet *sheet, json_t *plan)
{
    sheet_heading(sheet, "WHAT THIS PLAN TAKES FOR GRANTED");
    sheet_point(sheet, plan, "{assumed.strips_in_hand:strip} cut {assumed.strip_cut} wide, each at least "
                             "{assumed.strip_length} long without its selvages (usable). Measure yours: a set is only "
                             "as long as its shortest strip.");
    show_edges_of_strips(sheet, plan);
    sheet_point(sheet, plan, any(plan, "assumed", "take_up_per_seam")
                                 ? "Seam allowance {assumed.seam_allowance} on each edge, and "
                                   "{assumed.take_up_per_seam} more for fold and thread at every seam."
                                 : "Seam allowance {assumed.seam_allowance} on each edge, fold and thread included: "
                                   "sew a thread's width nearer the raw edge if your sets come out narrow.");
    show_cutting_habits(sheet, plan);
    if (json_array_size(json_object_get(plan, "buy")) > 0) {
        sheet_point(sheet, plan, "Cloth for borders and binding is {assumed.cloth_usable_width} wide without its "
                                 "selvages (usable), {assumed.cloth_care}, and sold in steps of "
                                 "{assumed.purchase_step}.");
        sheet_point(sheet, plan, any(plan, "assumed", "shrinkage") || any(plan, "assumed", "extra_share")
                                     ? "What to buy allows for {assumed.shrinkage} of shrinking and "
                                       "{assumed.extra_share} extra."
                                     : "What to buy allows nothing for shrinking and nothing extra.");
        if (any(plan, "assumed", "shrinkage"))
            sheet_point(sheet, plan, "Wash and press that cloth before you cut it: its widths here and all cut sizes "
                                     "are those after washing, and cloth shrinks in width as well as in length.");
    }
    sheet_say(sheet, plan, "If any of this differs for you, plan again with your own figures before you cut.");
}

/* ---- sets ------------------------------------------------------------------------------------------------------- */

/* Pairings beyond this many are left to the step that joins the blocks. */
#define TOLD_EARLY_MAX 8

static void show_meetings(struct sheet *sheet, json_t *plan)
{
    json_t *groups = part(plan, "blocks", "groups");
    if (json_integer_value(part(plan, "blocks", "segments_per_block")) < 2 || json_array_size(groups) == 0)
        return;
    if (json_array_size(groups) > TOLD_EARLY_MAX) {
        sheet_point(sheet, plan, "Which piles meet in a block is said where the blocks are joined; look there before "
                                 "you settle them, so that they look good together.");
        return;
    }
    sheet_point(sheet, plan, "These piles meet in a block, so make them look good together:");
    for (size_t i = 0; i < json_array_size(groups); i++)
        sheet_under(sheet, json_array_get(groups, i), "{stacks:pile}");
}

static void show_sorting(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "SORT AND LABEL");
    sheet_point(sheet, plan, "Sort the strips into {sets.sets:pile} of {sets.strips_per_set}, "
                             "{sets.strips_used:strip} in all, and lay each pile out in the order you like.");
    show_meetings(sheet, plan);
    sheet_point(sheet, plan, "Number the piles. The first strip of each pile is its strip A: label it with the number "
                             "and the letter A, on tape or with a pin, in the middle third of its length, so that no "
                             "set gets turned by mistake. Move pins out of the way before you cut.");
    if (any(plan, "left_over", "strips"))
        sheet_point(sheet, plan, "{left_over.strips:strip} stay out of this plan; choose them now.");
}

static void show_trio(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "TEST YOUR SEAM");
    sheet_point(sheet, plan, "Sew three short pieces, cut {assumed.strip_cut} wide like the strips, side by side, and "
                             "press them. From raw edge to raw edge they must measure {check.trio_unfinished_width} "
                             "unfinished, and the middle one must show {check.trio_centre_finished_width} finished. "
                             "Under {check.trio_unfinished_width}: sew nearer the raw edge; over it: farther from the "
                             "raw edge; and try again.");
    if (any(plan, "check", "error_of_a_set"))
        sheet_point(sheet, plan, "It matters: a needle only {check.needle_off_by} off makes each seam take "
                                 "{check.error_per_seam} too much or too little, and a set comes out "
                                 "{check.error_of_a_set} too narrow or too wide.");
    sheet_point(sheet, plan, any(plan, "left_over", "strips")
                                 ? "Before you sew the sets, sew one test block from strips that stay over, or from "
                                   "other cloth of the same kind."
                                 : "Before you sew the sets, sew one test block from other cloth of the same kind: no "
                                   "strip stays over.");
}

static void show_pressing(struct sheet *sheet, json_t *plan)
{
    bool to_top = any(plan, "sets", "press_towards_top");
    bool to_bottom = any(plan, "sets", "press_towards_bottom");
    sheet_point(sheet, plan, "Press every seam flat as sewn, then over to one side, without steam or pulling:");
    if (to_top)
        sheet_under(sheet, plan, "{sets.press_towards_top:set}: towards strip A");
    if (to_bottom)
        sheet_under(sheet, plan, "{sets.press_towards_bottom:set}: away from strip A");
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
    bool odd = (json_integer_value(part(plan, "sets", "strips_per_set")) & 1) != 0;
    sheet_point(sheet, plan, odd ? "Sew the strips of each pile long side to long side, {sets.seams_per_set:seam} a "
                                   "set: in pairs first, then pairs together, the odd strip last, each seam begun "
                                   "at the other end than the one before, so that the set stays straight."
                                 : "Sew the strips of each pile long side to long side, {sets.seams_per_set:seam} a "
                                   "set: in pairs first, then the pairs together, each seam begun at the other end "
                                   "than the one before, so that the set stays straight.");
    show_pressing(sheet, plan);
    sheet_point(sheet, plan, "Each set must measure {check.set_unfinished_width} unfinished across the strips, at both "
                             "ends and in the middle ({sets.finished_width} finished, {sets.strip_finished_width} of "
                             "each strip). Measure before you cut. If your sets differ, correct your seam before you "
                             "sew on; if you keep them, plan again with the seam you really sewed.");
}

/* ---- segments and blocks ---------------------------------------------------------------------------------------- */

/* How the cuts of one end go: "cut 3, square the edge again (1/8 in), cut 1". */
static void show_cuts_between_squarings(struct sheet *sheet, json_t *plan)
{
    json_t *cuts = part(plan, "segments", "cuts_between_squarings");
    char way[300] = "From each end: ";
    size_t used = strlen(way);
    if (json_array_size(cuts) == 0 && any(plan, "segments", "squared_again_per_set"))
        sheet_point(sheet, plan, "Square the edge again after every {assumed.resquare_every:cut} "
                                 "({assumed.resquare_loss}).");
    if (json_array_size(cuts) == 0)
        return;
    for (size_t i = 0; i < json_array_size(cuts); i++)
        used += (size_t)snprintf(way + used, sizeof way - used, "%scut %lld",
                                 i == 0 ? "" : ", square the edge again ({assumed.resquare_loss}), ",
                                 (long long)json_integer_value(json_array_get(cuts, i)));
    snprintf(way + used, sizeof way - used, ".");
    sheet_point(sheet, plan, way);
}

/* Every stack gives as many segments. */
static bool takes_alike(json_t *plan)
{
    return json_integer_value(part(plan, "segments", "first_stacks")) ==
           json_integer_value(part(plan, "segments", "stacks"));
}

/* Segments that are wider than a block takes, and what is trimmed of it; or that no mark gives. */
static void show_mark(struct sheet *sheet, json_t *plan)
{
    if (part(plan, "segments", "a_block_is_sewn_so_wide") != NULL)
        sheet_point(sheet, plan, "That is a little more than a block needs: unfinished it comes out "
                                 "{segments.a_block_is_sewn_so_wide} wide. Trim each block to "
                                 "{blocks.unfinished_width} unfinished, as much off one side as off the other.");
    if (part(plan, "segments", "finest_mark") != NULL)
        sheet_point(sheet, plan, "No mark of a ruler gives so many: cut at {segments.finest_mark}, a set gives "
                                 "{segments.finest_mark_gives}. Longer strips are safer.");
}

static void show_cutting(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "CUT THE SEGMENTS");
    sheet_point(sheet, plan, "Across each set, cut {segments.from_each_set:segment}, each cut {segments.cut_at} wide "
                             "({segments.segment_finished_width} finished). Lay the set open in one layer, with a "
                             "line of the ruler on a seam.");
    show_mark(sheet, plan);
    if (!any(plan, "assumed", "cut_from_one_end"))
        sheet_point(sheet, plan, "Square one end and cut {segments.from_each_end} from it; turn the mat, not the "
                                 "set, square the other end and cut {segments.from_each_end} from there. The fold "
                                 "stays in the piece left over.");
    else
        sheet_point(sheet, plan, "Square one end and cut {segments.from_each_end} from it.");
    if (part(plan, "segments", "from_each_set_straight_through") != NULL)
        sheet_point(sheet, plan, "Straight through from one end, across the fold, a set gives "
                                 "{segments.from_each_set_straight_through:segment}: plan with --one-end.");
    show_cuts_between_squarings(sheet, plan);
    sheet_point(sheet, plan, "Keep the segments of each set in one stack, strip A at the top: "
                             "{segments.stacks:stack}, numbered like the sets. Fix the label to the A edge of the "
                             "stack.");
    if (any(plan, "segments", "left"))
        sheet_point(sheet, plan, takes_alike(plan)
                                     ? "The plan uses {segments.used:segment}, {segments.from_the_first_stacks} from "
                                       "each stack. {segments.left:segment} stay over."
                                     : "The plan uses {segments.used:segment}: {segments.from_the_first_stacks} from "
                                       "each of the first {segments.first_stacks:stack}, "
                                       "{segments.from_each_other_stack} from each of the others. "
                                       "{segments.left:segment} stay over.");
}

/* ---- kinds of blocks -------------------------------------------------------------------------------------------- */

static bool every_seam_nests(json_t *groups)
{
    for (size_t i = 0; i < json_array_size(groups); i++)
        if (json_array_size(json_object_get(json_array_get(groups, i), "not_nesting")) > 0)
            return false;
    return true;
}

static bool holds_kind(json_t *groups, const char *pressed)
{
    for (size_t i = 0; i < json_array_size(groups); i++)
        if (says(json_array_get(groups, i), "first_segment_pressed", pressed))
            return true;
    return false;
}

/* Where blocks are not turned a quarter, strip seams meet the strip seams of the next block in the row, so it matters
 * how the first segment of a block lies pressed. Where some seams inside blocks do not nest, that rule cannot hold. */
static bool kinds_matter(json_t *plan)
{
    json_t *groups = part(plan, "blocks", "groups");
    return any(plan, "sets", "seams_per_set") && json_integer_value(part(plan, "top", "columns")) > 1 &&
           !says(json_object_get(plan, "top"), "turning", "quarter") && json_array_size(groups) > 0 &&
           every_seam_nests(groups);
}

static bool has_both_kinds(json_t *plan)
{
    json_t *groups = part(plan, "blocks", "groups");
    return kinds_matter(plan) && holds_kind(groups, "towards_top") && holds_kind(groups, "towards_bottom");
}

/* What follows for the row, from the turning, an odd or even number of segments, and whether there are two kinds. */
static const char *rule_of_kinds(bool half, bool odd, bool both)
{
    if (half && odd)
        return both ? "The picture is for blocks of the first kind. Put blocks of the second kind the other way up in "
                      "either place: then the strip seams of neighbours nest."
                    : NULL;
    if (!odd)
        return both ? "Keep to one kind of block in a row as far as you can: then the strip seams of neighbours nest. "
                      "Pin where two kinds meet."
                    : NULL;
    return both ? "Let the two kinds alternate in a row as far as you can: then the strip seams of neighbours nest. "
                  "Pin where two of one kind meet."
                : "The strip seams of neighbouring blocks are pressed the same way here: pin them where they meet.";
}

static bool turned_by_halves(json_t *plan)
{
    return says(json_object_get(plan, "top"), "turning", "half");
}

static bool has_odd_blocks(json_t *plan)
{
    return (json_integer_value(part(plan, "blocks", "segments_per_block")) & 1) != 0;
}

/* Is one kind turned where the other is not? */
static bool has_opposite_kinds(json_t *plan)
{
    return turned_by_halves(plan) && has_odd_blocks(plan) && has_both_kinds(plan);
}

static void show_rule_of_kinds(struct sheet *sheet, json_t *plan)
{
    if (!kinds_matter(plan))
        return;
    const char *rule = rule_of_kinds(turned_by_halves(plan), has_odd_blocks(plan), has_both_kinds(plan));
    if (rule != NULL)
        sheet_point(sheet, plan, rule);
}

/* ---- groups of blocks ------------------------------------------------------------------------------------------- */

static void show_turned(struct sheet *sheet, json_t *group)
{
    static const char *const ordinals[] = { "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth",
                                            "ninth", "tenth", "eleventh", "twelfth", "13th", "14th", "15th", "16th" };
    json_t *turned = json_object_get(group, "turn_end_for_end");
    for (size_t i = 0; i < json_array_size(turned); i++) {
        size_t place = (size_t)json_integer_value(json_array_get(turned, i)) - 1;
        json_t *one = json_pack("{s:O,s:s}", "stack", json_array_get(json_object_get(group, "stacks"), place), "place",
                                ordinals[place]);
        sheet_under(sheet, one, "Turn the one from stack {stack} ({place} from the left) end for end, strip A to the "
                                "bottom, so that the seams nest.");
        json_decref(one);
    }
}

static void show_not_nesting(struct sheet *sheet, json_t *group)
{
    json_t *places = json_object_get(group, "not_nesting");
    for (size_t i = 0; i < json_array_size(places); i++) {
        json_t *place = json_pack("{s:O}", "segments", json_array_get(places, i));
        sheet_under(sheet, place, "The seams of {segments:segment} do not nest: match them with a pin.");
        json_decref(place);
    }
}

static void show_group(struct sheet *sheet, json_t *group, bool with_kind)
{
    bool one = json_equal(json_object_get(group, "first_block"), json_object_get(group, "last_block"));
    json_t *copy = json_copy(group);
    bool first = says(group, "first_segment_pressed", "towards_top");
    json_object_set_new(copy, "kind", json_string(!with_kind ? "" : first ? ", first kind" : ", second kind"));
    sheet_point(sheet, copy, one ? "Block {first_block}{kind}: one segment from each of {stacks:stack}, left to right."
                                 : "Blocks {first_block} to {last_block}{kind}: one segment from each of "
                                   "{stacks:stack}, left to right.");
    json_decref(copy);
    show_turned(sheet, group);
    show_not_nesting(sheet, group);
    if (json_is_true(json_object_get(group, "repeats_a_set")))
        sheet_under(sheet, group, "These blocks hold two segments of one set.");
}

/* The seams inside a block: of blocks one below the other they must go opposite ways. Half turns see to that, but where
 * the second kind is turned against the first (see rule_of_kinds), it must be pressed against it too. */
static void show_block_pressing(struct sheet *sheet, json_t *plan)
{
    if (json_integer_value(part(plan, "blocks", "segments_per_block")) < 2)
        return;
    if (says(json_object_get(plan, "top"), "turning", "none"))
        sheet_point(sheet, plan, "Press the seams between segments to the left in blocks for odd rows of the layout, "
                                 "to the right in blocks for even rows.");
    else if (has_opposite_kinds(plan))
        sheet_point(sheet, plan, "Press the seams between segments to the left in blocks of the first kind, to the "
                                 "right in those of the second, before they are turned.");
    else
        sheet_point(sheet, plan, "Press the seams between segments to the left in every block, before it is turned.");
    if (says(json_object_get(plan, "top"), "turning", "quarter") && any(plan, "sets", "seams_per_set"))
        sheet_point(sheet, plan, "Where such a seam meets a strip seam of a neighbour turned a quarter, not every pair "
                                 "can be pressed to nest: pin those that do not, or twist the seam there. Where it "
                                 "falls between two strip seams, match only the corners of the blocks.");
}

static void show_pairing(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "JOIN SEGMENTS INTO BLOCKS");
    json_t *groups = part(plan, "blocks", "groups");
    bool both = has_both_kinds(plan);
    sheet_point(sheet, plan, "{blocks.blocks:block}, each of {blocks.segments_per_block:segment} sewn side by side, "
                             "strips A up unless told otherwise:");
    for (size_t i = 0; i < json_array_size(groups); i++)
        show_group(sheet, json_array_get(groups, i), both);
    if (json_array_size(groups) == 0)
        sheet_under(sheet, plan, "{blocks.different_pairings} different pairings are too many to list; plan fewer tops "
                                 "at a time to see them.");
    if (both)
        sheet_point(sheet, plan, "In blocks of the first kind the strip seams of the first segment are pressed "
                                 "upwards, in those of the second kind downwards. Mark each block with its kind.");
    show_block_pressing(sheet, plan);
    sheet_point(sheet, plan, "Each block must measure {blocks.unfinished_width} wide and {blocks.unfinished_height} "
                             "high unfinished ({blocks.finished_width} by {blocks.finished_height} finished). Measure "
                             "the first one before you sew the others.");
}

/* ---- the top ---------------------------------------------------------------------------------------------------- */

static void show_top(struct sheet *sheet, json_t *plan)
{
    sheet_step(sheet, "LAY OUT AND JOIN THE TOP");
    sheet_point(sheet, plan, "{top.rows:row} of {top.columns:block}: {top.blocks:block} for each top.");
    if (any(plan, "top", "blocks_turned"))
        sheet_point(sheet, plan, says(json_object_get(plan, "top"), "turning", "half")
                                     ? "Turn every other block upside down, like the squares of a chessboard."
                                     : "Turn every other block a quarter to the right, like the squares of a "
                                       "chessboard: {top.blocks_turned} are turned.");
    sheet_point(sheet, plan, json_integer_value(part(plan, "top", "tops")) > 1
                                 ? "Deal the blocks evenly to the tops, and spread blocks of the same stacks over "
                                   "each, so that equal ones do not touch."
                                 : "Spread blocks of the same stacks over the top, so that equal ones do not touch.");
    draw_layout(sheet, plan);
    show_rule_of_kinds(sheet, plan);
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
    if (json_object_get(plan, "batting") == NULL || json_object_get(plan, "backing") == NULL)
        sheet_say(sheet, plan, "Batting or backing is not in this plan: plan what is missing before you shop.");
    sheet_say(sheet, plan, any(plan, "assumed", "extra")
                               ? "{assumed.extra} is added to each length for a crooked cut in the shop."
                               : "Nothing is added for a crooked cut in the shop; to add some, plan with "
                                 "--extra.");
}

static void show_left_over(struct sheet *sheet, json_t *plan)
{
    sheet_heading(sheet, "WHAT IS LEFT OVER");
    sheet_point(sheet, plan, "{left_over.strips:strip} and {left_over.segments:segment}; of each set a piece "
                             "{left_over.of_each_set} long, fold included.");
    sheet_point(sheet, plan, "All the strips in hand make {left_over.tops_from_all_strips:top}; one more would take "
                             "{left_over.strips_missing_for_one_more_top:more strip}.");
}

static void show_border_edges(struct sheet *sheet, json_t *plan)
{
    json_t *borders = json_object_get(plan, "borders");
    for (size_t i = 0; i < json_array_size(borders); i++) {
        json_t *border = json_array_get(borders, i);
        sheet_point(sheet, border, json_is_true(json_object_get(border, "lengthwise"))
                                       ? "The cloth of border {number} has {spare} of its width to spare."
                                       : "The strips of border {number} may each be {strips_may_be_shorter_by} shorter "
                                         "before one more is needed; their run has {spare} to spare.");
    }
}

/* Is what is bought just what one backing needs, up to the shop's step? For several tops it is rounded once for all. */
static bool buys_one_backing(json_t *plan)
{
    return json_integer_value(part(plan, "top", "tops")) == 1 && !any(plan, "assumed", "shrinkage") &&
           !any(plan, "assumed", "extra_share") && !any(plan, "assumed", "extra");
}

/* Where it is not, no more is promised than the width planned with. */
static void show_narrowest_cloth(struct sheet *sheet, json_t *plan)
{
    json_t *backing = json_object_get(plan, "backing");
    if (buys_one_backing(plan))
        sheet_point(sheet, backing, "{chosen.bought} of backing is enough only while the cloth is at least "
                                    "{cloth_must_be_at_least} wide, selvages counted as in its step.");
    else
        sheet_point(sheet, backing, "The backing bought is enough only while the cloth is {cloth_width} wide, selvages "
                                    "counted as in its step, or wider.");
    sheet_point(sheet, backing, "If your backing cloth is narrower than planned, plan again with its width before you "
                                "cut: the panels change.");
}

static void show_edges(struct sheet *sheet, json_t *plan)
{
    sheet_heading(sheet, "HOW NEAR THE EDGE THIS IS");
    sheet_point(sheet, plan, any(plan, "edges", "strip_may_be_shorter_by")
                                 ? "Each strip may be {edges.strip_may_be_shorter_by} shorter than planned, down to "
                                   "{edges.shortest_strip_that_gives_as_many} usable."
                                 : "Each strip may be {edges.strip_may_be_shorter_by} shorter than planned. Measure "
                                   "every strip before you sew.");
    sheet_point(sheet, plan, any(plan, "assumed", "cut_from_one_end")
                                 ? "Below that, its set loses a segment."
                                 : "Below that, its set loses two segments, one at each end.");
    show_border_edges(sheet, plan);
    if (part(plan, "edges", "binding_strips_may_be_shorter_by") != NULL)
        sheet_point(sheet, plan, "The binding's strips may each be {edges.binding_strips_may_be_shorter_by} shorter "
                                 "before one more is needed.");
    if (part(plan, "edges", "backing_cloth_may_be_narrower_by") != NULL)
        show_narrowest_cloth(sheet, plan);
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
    sheet_say(sheet, plan, json_array_size(json_object_get(plan, "borders")) > 0
                               ? "{top.tops:top} of {top.columns} by {top.rows} blocks, each {quilt_finished_width} "
                                 "wide and {quilt_finished_length} long finished, borders included."
                               : "{top.tops:top} of {top.columns} by {top.rows} blocks, each {quilt_finished_width} "
                                 "wide and {quilt_finished_length} long finished.");
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
    show_finishing(sheet, plan);
    show_buying(sheet, plan);
    show_left_over(sheet, plan);
    show_edges(sheet, plan);
    show_section(sheet, json_object_get(plan, "warnings"), "WORTH KNOWING");
    show_section(sheet, json_object_get(plan, "cautions"), "TAKE CARE");
}
