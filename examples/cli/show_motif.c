/* show_motif.c - windows on a print as one counts them, and stacks of identical layers as one cuts them.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>

#include "look.h"
#include "sheet.h"

static bool has(json_t *object, const char *member)
{
    return json_object_get(object, member) != NULL;
}

/* Is there any of it: a length or a count that is not zero? */
static bool some(json_t *object, const char *member)
{
    json_t *value = json_object_get(object, member);
    json_t *ticks = json_object_get(value, "ticks");
    return json_integer_value(ticks != NULL ? ticks : value) != 0;
}

/* ---- windows ---------------------------------------------------------------------------------------------------- */

/* What a row gives, wherever the print begins between the selvages. */
static void show_chances(struct sheet *sheet, json_t *answer)
{
    bool sure = json_equal(json_object_get(answer, "from_each_row_for_certain"),
                           json_object_get(answer, "from_each_row_at_most"));
    if (!has(answer, "repeat_width")) {
        sheet_point(sheet, answer, "The whole usable width counts as one repeat: {from_each_row:piece} in each row, as "
                                   "you see on the cloth.");
        if (json_equal(json_object_get(answer, "cut_width"), json_object_get(answer, "usable_width")))
            sheet_point(sheet, answer, "A piece is as wide as the cloth, {usable_width} usable: nothing to spare, so "
                                       "measure your cloth first.");
        return;
    }
    sheet_point(sheet, answer, "For certain, wherever the print begins between the selvages: "
                                   "{from_each_row_for_certain:piece} in each row, {rows_for_certain:row}, "
                                   "{cloth_for_certain} of cloth.");
    if (!sure)
        sheet_point(sheet, answer, "With luck, that is if the first whole motif begins within "
                                   "{first_must_begin_within} of the edge of the usable width: "
                                   "{from_each_row_at_most:piece} in each row, {rows_with_luck:row}, {cloth_with_luck} "
                                   "of cloth in whole repeats. Measure that on the bolt before you buy less.");
}

/* Whole repeats are comfortable; what lies behind the last window is not needed. */
static void show_least(struct sheet *sheet, json_t *answer)
{
    if (json_is_true(json_object_get(answer, "less_than_whole_repeats_will_do")))
        sheet_point(sheet, answer, "What lies behind the last piece need not be there: "
                                   "{least_cloth_length} will do, with the start chosen. {cloth_length}, in whole "
                                   "repeats, is comfortable.");
}

static void show_widths(struct sheet *sheet, json_t *answer)
{
    if (has(answer, "cloth_may_be_narrower_by") && some(answer, "rows"))
        sheet_point(sheet, answer, some(answer, "cloth_may_be_narrower_by")
                                       ? "The cloth may be {cloth_may_be_narrower_by} narrower for these {rows:row}."
                                       : "{usable_width} usable is the least width for these {rows:row}: nothing to "
                                         "spare.");
    if (has(answer, "fewer_rows_if_wider_by"))
        sheet_point(sheet, answer, "On cloth {fewer_rows_if_wider_by} wider {rows_if_wider:row} would do.");
}

static bool is_true(json_t *answer, const char *member)
{
    return json_is_true(json_object_get(answer, member));
}

/* Yes or no, and what would make it yes. */
static const char *enough_sentence(json_t *answer)
{
    if (is_true(answer, "enough_for_certain"))
        return "Yes, it is enough: {pieces_from_it_for_certain} for certain, {pieces_wanted} are wanted.";
    if (is_true(answer, "enough_with_luck"))
        return "Not certain to be enough: {pieces_from_it_for_certain} of {pieces_wanted} for certain, "
               "{pieces_from_it_at_most} with luck; {longer_to_be_certain_by} more makes {pieces_wanted} certain.";
    return has(answer, "repeat_width")
               ? "No, it is not enough: {pieces_from_it_for_certain} of {pieces_wanted} for certain, "
                 "{pieces_from_it_at_most} even with luck; {longer_to_be_certain_by} more makes {pieces_wanted} "
                 "certain."
               : "No, it is not enough: {pieces_from_it_for_certain} of {pieces_wanted}; {longer_to_be_certain_by} "
                 "more makes {pieces_wanted}.";
}

static void show_window_cloth(struct sheet *sheet, json_t *answer)
{
    sheet_heading(sheet, "From what is in hand");
    sheet_point(sheet, answer, enough_sentence(answer));
    sheet_point(sheet, answer, some(answer, "rows_from_it")
                                   ? "Your {cloth_in_hand} of cloth gives {rows_from_it:row}: {pieces_from_it:piece}."
                                   : "Your {cloth_in_hand} of cloth gives no row.");
    if (has(answer, "repeat_width") && some(answer, "rows_from_it"))
        sheet_point(sheet, answer, "These are certain wherever the print begins between the selvages; with luck there "
                                   "are {pieces_from_it_at_most}.");
    sheet_point(sheet, answer, some(answer, "left_over_of_it")
                                   ? "{left_over_of_it} of it is left over; {longer_for_one_more_row_by} more would "
                                     "give one more row."
                                   : "Nothing of it is left over; {longer_for_one_more_row_by} more would give one "
                                     "more row.");
}

void show_motif(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, some(answer, "repeat_for_choosing_the_start")
                                 ? "{pieces_wanted:piece} cut {cut_width} by {cut_length} take {rows:row}: "
                                   "{repeats_of_the_print:repeat} used + 1 to choose the start = "
                                   "{repeats_to_buy:repeat} of the print, {cloth_length} of cloth {usable_width} "
                                   "wide (usable)."
                                 : "{pieces_wanted:piece} cut {cut_width} by {cut_length} take {rows:row}: "
                                   "{repeats_to_buy:repeat} of the print, {cloth_length} of cloth {usable_width} wide "
                                   "(usable).");
    sheet_heading(sheet, "The cloth");
    if (!has(answer, "cloth_in_hand"))
        show_shop_length(sheet, answer);
    show_least(sheet, answer);
    if (some(answer, "repeat_for_choosing_the_start"))
        sheet_point(sheet, answer, "The repeat more is for a cut anywhere in the print, as shops make it. Leave it out "
                                   "with --whole-repeats if yours is cut where a repeat begins.");
    else
        sheet_point(sheet, answer, "Counted from where a repeat begins along the cloth: it must be cut there.");
    show_chances(sheet, answer);
    show_widths(sheet, answer);
    sheet_heading(sheet, "Cutting");
    sheet_point(sheet, answer, has(answer, "finished_width")
                                   ? "Try a window {finished_width} by {finished_length}, cut from paper, on your "
                                     "cloth first: the motif must fit in that, which is the finished size (seam "
                                     "allowance {seam_allowance}). The piece is cut {cut_width} by {cut_length} around it."
                                   : "Try a window {cut_width} by {cut_length}, cut from paper, on your cloth first. "
                                     "These are cut sizes, and the seams take all of them.");
    sheet_point(sheet, answer, "Each piece takes {repeats_across_for_each:repeat} across and "
                               "{repeats_along_for_each:repeat} along: a row is {length_of_a_row} long, and "
                               "{wasted_in_each_row} of it is wasted.");
    if (some(answer, "pieces_to_spare"))
        sheet_point(sheet, answer, "The last row could give {pieces_to_spare} more.");
    if (has(answer, "cloth_in_hand"))
        show_window_cloth(sheet, answer);
}

/* ---- identical layers ------------------------------------------------------------------------------------------- */

static void show_stack_cutting(struct sheet *sheet, json_t *answer)
{
    sheet_step(sheet, "Layers");
    sheet_point(sheet, answer, "Cut the cloth into {layers:layer} of {length_of_each_layer}, "
                               "{repeats_in_each_layer:repeat} each, all beginning at the same place of the print.");
    sheet_point(sheet, answer, "Lay them on each other and line up the print through all of them.");
    sheet_point(sheet, answer, some(answer, "not_used_of_each_layer")
                                   ? "Only the first {used_of_each_layer} of each {length_of_each_layer} layer is "
                                     "used. Do not shorten the layers: each must begin a whole repeat behind the one "
                                     "before."
                                   : "All {length_of_each_layer} of each layer are used: nothing to spare.");
    sheet_step(sheet, "Strips and stacks");
    if (some(answer, "taken_off_once"))
        sheet_point(sheet, answer, "Straighten the end of the stack: {taken_off_once} is allowed for that.");
    sheet_point(sheet, answer, "Cut {strips_to_cut_through_all_layers:strip} {strip_cut} wide through all layers, and "
                               "from each up to {stacks_from_each_strip:stack} of {layers:piece}: "
                               "{identical_pieces_in_all} pieces in all, {layers} alike in each stack.");
    if (some(answer, "stacks_to_spare"))
        sheet_point(sheet, answer, "All {strips_that_the_layers_give:strip} that the layers hold would give "
                                   "{stacks_to_spare:stack} more.");
}

void show_stack(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, some(answer, "repeat_for_choosing_the_start")
                                 ? "{stacks_wanted:stack} of {layers:identical piece} take "
                                   "{repeats_of_the_print:repeat} used + 1 to choose the start = "
                                   "{repeats_to_buy:repeat} of the print, {cloth_length} of cloth."
                                 : "{stacks_wanted:stack} of {layers:identical piece} take {repeats_to_buy:repeat} of "
                                   "the print, {cloth_length} of cloth.");
    sheet_gap(sheet);
    show_shop_length(sheet, answer);
    show_least(sheet, answer);
    if (some(answer, "repeat_for_choosing_the_start"))
        sheet_point(sheet, answer, "The repeat more is for a cut anywhere in the print, as shops make it. Leave it out "
                                   "with --whole-repeats if yours is cut where a repeat begins.");
    sheet_point(sheet, answer, "Sizes are cut sizes. Cut one stack and sew one block first.");
    if (some(answer, "strips_to_cut_through_all_layers"))
        show_stack_cutting(sheet, answer);
}
