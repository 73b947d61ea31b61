/* show_supplies.c - seams, thread, stitches, lines of quilting and weight, in sentences.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdio.h>

#include "look.h"
#include "sheet.h"

static bool has(json_t *answer, const char *member)
{
    return json_object_get(answer, member) != NULL;
}

static json_int_t ticks(json_t *answer, const char *member)
{
    return json_integer_value(part(answer, member, "ticks"));
}

static json_int_t count(json_t *answer, const char *member)
{
    return json_integer_value(json_object_get(answer, member));
}

static bool is_about(json_t *answer, const char *member)
{
    return json_is_false(part(answer, member, "exact"));
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

static void show_sets(struct sheet *sheet, json_t *counted)
{
    if (count(counted, "sets") > 0)
        sheet_point(sheet, counted, "{sets:strip set} of {strips_per_set:strip}, {strip_length} long.");
}

static void show_tops(struct sheet *sheet, json_t *counted)
{
    if (count(counted, "tops") > 0)
        sheet_point(sheet, counted, count(counted, "segments_per_block") > 1
                                        ? "{tops:top} of {columns} x {rows} blocks, each {finished_block_width} by "
                                          "{finished_block_height} finished and of {segments_per_block:segment} side "
                                          "by side; seam allowance {seam_allowance}."
                                        : "{tops:top} of {columns} x {rows} blocks, each {finished_block_width} by "
                                          "{finished_block_height} finished; seam allowance {seam_allowance}.");
}

void show_seams(struct sheet *sheet, json_t *answer)
{
    json_t *counted = json_object_get(answer, "counted");
    if (has(answer, "total_in_yards"))
        sheet_say(sheet, answer, "That is {total_in_yards}; see muslin thread.");
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Counted:");
    show_sets(sheet, counted);
    show_tops(sheet, counted);
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Seams:");
    if (ticks(answer, "in_the_sets") > 0)
        sheet_point(sheet, answer, "in the strip sets {in_the_sets}");
    if (ticks(answer, "within_blocks") > 0)
        sheet_point(sheet, answer, "between the segments of the blocks {within_blocks}");
    if (ticks(answer, "from_block_to_block") > 0)
        sheet_point(sheet, answer, "from block to block {from_block_to_block}");
    if (ticks(answer, "from_row_to_row") > 0)
        sheet_point(sheet, answer, "from row to row {from_row_to_row}");
    sheet_gap(sheet);
    show_sentences(sheet, json_object_get(answer, "assumptions"));
}

/* ---- thread ----------------------------------------------------------------------------------------------------- */

/* Spools from which the bobbins are wound reach as far as the room on the last bobbin: that is said once, for both. */
static bool is_said_once(json_t *answer)
{
    return has(answer, "room_on_the_last_bobbin") && has(answer, "spools") &&
           ticks(answer, "bobbins_reach_for_so_much_more_seam") == ticks(answer, "spools_reach_for_so_much_more_seam");
}

static void show_holders(struct sheet *sheet, json_t *answer)
{
    if (is_said_once(answer)) {
        sheet_point(sheet, answer, "{bobbins:bobbin} to wind; room on the last bobbin: {room_on_the_last_bobbin}.");
        sheet_point(sheet, answer, "{spools:spool}, with {left_on_the_last_spool} left on the last.");
        sheet_point(sheet, answer, "In all that is enough for {spools_reach_for_so_much_more_seam} of seam more; "
                                   "filling up that bobbin is already counted.");
        return;
    }
    if (has(answer, "bobbins"))
        sheet_point(sheet, answer, has(answer, "room_on_the_last_bobbin")
                                       ? "{bobbins:bobbin} to wind; room on the last bobbin: "
                                         "{room_on_the_last_bobbin}, enough for {bobbins_reach_for_so_much_more_seam} "
                                         "of seam more."
                                       : "{bobbins:wound bobbin}; left on the last bobbin: {left_on_the_last_bobbin}, "
                                         "enough for {bobbins_reach_for_so_much_more_seam} of seam more.");
    if (has(answer, "spools"))
        sheet_point(sheet, answer, "{spools:spool}, with {left_on_the_last_spool} left on the last, enough for "
                                   "{spools_reach_for_so_much_more_seam} of seam more.");
}

void show_thread(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, "By the {reckoned_by}, {thread_per_seam}.");
    sheet_point(sheet, answer, "For the seam itself {thread_without_waste}; with {waste} for waste {thread}.");
    sheet_point(sheet, answer, is_about(answer, "needle_thread")
                                   ? "Of it {needle_thread} from the needle and {bobbin_thread} from the bobbin; each "
                                     "figure here is rounded up by itself."
                                   : "Of it {needle_thread} from the needle and {bobbin_thread} from the bobbin.");
    show_holders(sheet, answer);
    sheet_gap(sheet);
    show_sentences(sheet, json_object_get(answer, "assumptions"));
}

/* ---- stitches --------------------------------------------------------------------------------------------------- */

void show_stitches(struct sheet *sheet, json_t *answer)
{
    if (has(answer, "wanted_per_inch"))
        sheet_point(sheet, answer, "Wanted were {wanted_per_inch} to the inch.");
    sheet_point(sheet, answer, "In whole stitches that is {in_whole_stitches_per_inch} to the inch.");
}

/* ---- lines of quilting ------------------------------------------------------------------------------------------ */

/* Lines one way, where the last one lies, and the spacing that would use up what is left. */
static void show_straight(struct sheet *sheet, json_t *answer, const char *member, const char *direction)
{
    json_t *way = json_object_get(answer, member);
    char sentence[400];
    if (way == NULL)
        return;
    bool even = !has(way, "spaced_evenly_they_lie") || ticks(way, "left_behind_the_last") == 0;
    snprintf(sentence, sizeof sentence, "{lines:line} %s, {length_of_one} long: the first lies %s, the last %s%s",
             direction, ticks(answer, "offset") == 0 ? "on the edge itself" : "{offset} from the edge",
             ticks(way, "last_from_the_edge") == 0 ? "on the other edge" : "{last_from_the_edge} from the other edge",
             even ? "." : ". Laid {spaced_evenly_they_lie} apart instead, they come out even.");
    json_object_set(way, "offset", json_object_get(answer, "offset"));
    sheet_point(sheet, way, sentence);
    json_object_del(way, "offset");
}

static void show_diagonal(struct sheet *sheet, json_t *answer, const char *member, const char *direction)
{
    json_t *way = json_object_get(answer, member);
    char sentence[100];
    snprintf(sentence, sizeof sentence, "{lines:line} %s", direction);
    if (way != NULL)
        sheet_point(sheet, way, sentence);
}

void show_quilting_lines(struct sheet *sheet, json_t *answer)
{
    if (has(answer, "spacing"))
        sheet_point(sheet, answer, "Pattern {pattern}, {spacing} from line to line, on {width} by {length}.");
    else
        sheet_point(sheet, answer, "{outline} to outline, {lines:time}.");
    if (has(answer, "length_of_all_lines_in_yards"))
        sheet_point(sheet, answer, "All lines together are {length_of_all_lines_in_yards}; see muslin thread.");
    show_straight(sheet, answer, "from_side_to_side", "from side to side");
    show_straight(sheet, answer, "from_top_to_bottom", "from top to bottom");
    show_diagonal(sheet, answer, "down_to_the_right", "down to the right");
    show_diagonal(sheet, answer, "down_to_the_left", "down to the left");
    sheet_gap(sheet);
    show_sentences(sheet, json_object_get(answer, "assumptions"));
}

/* ---- weight ----------------------------------------------------------------------------------------------------- */

void show_weight(struct sheet *sheet, json_t *answer)
{
    json_t *layers = json_object_get(answer, "layers");
    bool seams = false;
    bool several = json_array_size(layers) > 1;
    sheet_say(sheet, answer, "A quilt {finished_width} by {finished_length} finished:");
    for (size_t i = 0; i < json_array_size(layers); i++) {
        json_t *layer = json_array_get(layers, i);
        sheet_point(sheet, layer, has(layer, "in_seams") ? "{layer} {mass}, of {cloth} and {in_seams} more in its seams"
                                                         : "{layer} {mass}, of {cloth}");
        seams = seams || has(layer, "in_seams");
    }
    sheet_gap(sheet);
    sheet_say(sheet, answer, several ? "Together {total}: {counted} alone, without thread{not_counted}. Each figure is "
                                       "rounded by itself."
                                     : "That is {counted} alone, without thread{not_counted}.");
    if (!seams)
        sheet_say(sheet, answer, "That is the flat area only: nothing is counted for what lies in the seams "
                                 "(--in-seams).");
}
