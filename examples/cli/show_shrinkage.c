/* show_shrinkage.c - sizes before and after, and errors added up, in sentences.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>

#include "look.h"
#include "sheet.h"

/* A sentence for each element of a list; nothing where there is no such list. */
static void show_each_point(struct sheet *sheet, json_t *answer, const char *list, const char *template)
{
    json_t *elements = json_object_get(answer, list);
    for (size_t i = 0; i < json_array_size(elements); i++)
        sheet_point(sheet, json_array_get(elements, i), template);
}

static bool has(json_t *answer, const char *member)
{
    return json_object_get(answer, member) != NULL;
}

static void show_measured(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "Measured before and after (a change below zero is shrinkage):");
    show_each_point(sheet, answer, "measured", "The {side} went from {before} to {after}: {change}.");
    if (has(answer, "change_of_the_area"))
        sheet_point(sheet, answer, "The area changed by {change_of_the_area}, which is neither of the two.");
}

static void show_by_sample(struct sheet *sheet, json_t *answer)
{
    sheet_gap(sheet);
    sheet_say(sheet, answer, "By this sample, to end at the size wanted:");
    show_each_point(sheet, answer, "make_by_the_sample",
                    "Make the {side} {make_finished} finished, to end at {wanted_finished} finished.");
}

/* Only where multiplying is wrong by a tick or more. */
static void show_shortfalls(struct sheet *sheet, json_t *sides)
{
    for (size_t i = 0; i < json_array_size(sides); i++) {
        json_t *side = json_array_get(sides, i);
        if (json_integer_value(part(side, "and_end_short_by", "ticks")) > 0)
            sheet_point(sheet, side, "Multiplying the {side} by the shares would say {multiplying_would_say} and end "
                                     "{and_end_short_by} short, so divide by what is left.");
    }
}

static void show_make(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "Before quilting and washing, make the quilt (all sizes are finished ones):");
    show_each_point(sheet, answer, "make",
                    "Make the {side} {make_finished} finished, to end at {wanted_finished}. {lost_to_quilting} goes to "
                    "quilting, {lost_in_the_wash} in the wash.");
    sheet_gap(sheet);
    sheet_say(sheet, answer, "On the way, to check:");
    show_each_point(sheet, answer, "make",
                    "Quilted and not yet washed, the {side} must be at least {must_measure_when_quilted}; the size to "
                    "make ends at {then_ends_at}.");
    show_shortfalls(sheet, json_object_get(answer, "make"));
}

static void show_becomes(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "The quilt as made becomes (all sizes are finished ones):");
    show_each_point(sheet, answer, "becomes",
                    "The {side}, made {made_finished}, is {quilted} quilted and {washed} washed: {change} in all.");
}

void show_shrinkage(struct sheet *sheet, json_t *answer)
{
    if (has(answer, "measured"))
        show_measured(sheet, answer);
    if (has(answer, "make_by_the_sample"))
        show_by_sample(sheet, answer);
    if (has(answer, "make"))
        show_make(sheet, answer);
    if (has(answer, "becomes"))
        show_becomes(sheet, answer);
    sheet_gap(sheet);
    if (has(answer, "governing"))
        sheet_say(sheet, answer, "In the wash {governing.share} was reckoned with, by {governing.source}. That one of "
                                 "them governs is a rule of thumb.");
    sheet_say(sheet, answer, has(answer, "measured")
                                 ? "A sample counts for a quilt of the same fabric, batting and quilting, washed the "
                                   "same way."
                                 : "Shares are guesses until they are measured: quilt and wash a sample first, as the "
                                   "quilt will be, and measure it before and after.");
}

void show_prewash(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "Wash {to_wash} to have {needed_after_the_wash} afterwards: the length loses "
                             "{length_lost} ({lost_along}).");
    sheet_gap(sheet);
    show_shop_length(sheet, answer);
    sheet_point(sheet, answer, "The usable width goes from {usable_width_before} to {usable_width_after} "
                               "({lost_across}).");
    sheet_point(sheet, answer, "Was the length worked out for cloth as wide as before? Work it out again for the width "
                               "after the wash: narrower cloth may need more strips.");
    sheet_point(sheet, answer, "Shops that cut in other steps, and extra for safety: see muslin buy.");
}

/* ---- accuracy --------------------------------------------------------------------------------------------------- */

/* The allowed error of a seam, where the cuts alone leave room for one. */
static void show_allowed(struct sheet *sheet, json_t *rows)
{
    if (has(rows, "seam_error_allowed_at_worst"))
        sheet_point(sheet, rows, "For all to meet even at worst, one seam may be off by "
                                 "{seam_error_allowed_at_worst}.");
    else
        sheet_point(sheet, rows, "The cuts alone keep them from meeting at worst, however exact the seams.");
    if (has(rows, "seam_error_allowed_as_chance_has_it"))
        sheet_point(sheet, rows, "As chance has it, one seam may be off by {seam_error_allowed_as_chance_has_it}.");
    else
        sheet_point(sheet, rows, "The cuts alone are likely to keep them from meeting.");
}

static void show_rows(struct sheet *sheet, json_t *rows)
{
    sheet_gap(sheet);
    sheet_say(sheet, rows, "Neighbouring rows, laid edge to edge at one end, {seams:seam} in each:");
    sheet_point(sheet, rows, "At the last seam they are {apart_at_worst} apart at worst, {apart_as_chance_has_it} as "
                             "chance has it. Seams within {meet_within} of each other meet.");
    sheet_point(sheet, rows, has(rows, "first_seam_that_may_miss")
                                 ? "At worst seam {first_seam_that_may_miss} is the first to miss."
                                 : "All seams meet, even at worst.");
    if (has(rows, "first_seam_likely_to_miss"))
        sheet_point(sheet, rows, "As chance has it, seam {first_seam_likely_to_miss} is the first to miss.");
    else if (has(rows, "first_seam_that_may_miss"))
        sheet_point(sheet, rows, "As chance has it, all seams meet.");
    show_allowed(sheet, rows);
    sheet_point(sheet, rows, "Pinned at the middle seam and eased from there, only half as many seams lie between.");
}

void show_accuracy(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "Each seam off by {error_of_a_seam} and each cut by {error_of_a_cut}, measured from raw "
                             "edge to raw edge:");
    show_each_point(sheet, answer, "measures",
                    "The {measure} may be off by {off_at_worst} at worst, {off_as_chance_has_it} as chance has it "
                    "({seams:seam}, {cut_edges:cut edge}).");
    if (has(answer, "neighbouring_rows"))
        show_rows(sheet, json_object_get(answer, "neighbouring_rows"));
    sheet_gap(sheet);
    sheet_say(sheet, answer, "At worst: all errors that large and all the same way. As chance has it: errors that lean "
                             "neither way and do not depend on each other; about two measures in three stay within it, "
                             "nineteen in twenty within twice as much. Geometry and probability, no published source.");
    sheet_say(sheet, answer, "A seam that is always too wide is not chance and adds up like the worst case: sew a test "
                             "set first and see muslin calibrate. Squaring up each block ends the errors inside it.");
}
