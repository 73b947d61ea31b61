/* show_shrinkage.c - sizes before and after, and errors added up, in sentences.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdio.h>

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

/* A length or a share of the side that is not zero. */
static bool any_of(json_t *side, const char *member)
{
    return json_integer_value(part(side, member, "ticks")) != 0 || json_integer_value(part(side, member, "ppm")) != 0;
}

static void show_measured(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "Measured before and after, that is sewn and unquilted, and then quilted and washed:");
    show_each_point(sheet, answer, "measured", "The {side} went from {before} to {after}: it {in_words}.");
    if (has(answer, "change_of_the_area"))
        sheet_point(sheet, answer, "The area {area_in_words}, which is neither of the two nor their sum.");
}

static void show_by_sample(struct sheet *sheet, json_t *answer)
{
    sheet_gap(sheet);
    sheet_say(sheet, answer, "By this sample, to end at the size wanted:");
    show_each_point(sheet, answer, "make_by_the_sample",
                    "Make the {side} {make_finished} finished ({make_unfinished} unfinished, with a seam allowance of "
                    "{seam_allowance}), to end at {wanted_finished} finished.");
}

/* The shares of a side, and those for which none was given. */
static const char *shares_sentence(json_t *side)
{
    bool quilting = any_of(side, "lost_to_quilting");
    bool washing = any_of(side, "lost_in_the_wash");
    if (quilting && washing)
        return "Of the {side}, {lost_to_quilting} goes to quilting, and of what is left {lost_in_the_wash} in the "
               "wash.";
    if (quilting)
        return "Of the {side}, {lost_to_quilting} goes to quilting; no share for the wash was given: nothing is "
               "allowed for it.";
    if (washing)
        return "Of the {side}, {lost_in_the_wash} goes in the wash; no share for quilting was given: nothing is "
               "allowed for it.";
    return "Of the {side} nothing is taken to be lost.";
}

static void show_shares(struct sheet *sheet, json_t *sides)
{
    for (size_t i = 0; i < json_array_size(sides); i++)
        sheet_point(sheet, json_array_get(sides, i), shares_sentence(json_array_get(sides, i)));
}

/* Only where adding the shares on is wrong by what can be seen. */
static void show_shortfalls(struct sheet *sheet, json_t *sides)
{
    for (size_t i = 0; i < json_array_size(sides); i++) {
        json_t *side = json_array_get(sides, i);
        bool both = any_of(side, "lost_to_quilting") && any_of(side, "lost_in_the_wash");
        const char *share = any_of(side, "lost_to_quilting") ? "{lost_to_quilting}" : "{lost_in_the_wash}";
        char sentence[240];
        if (!json_is_true(json_object_get(side, "short_by_what_is_seen")))
            continue;
        snprintf(sentence, sizeof sentence, "Note: adding %s to the {side} instead would give {multiplying_would_say}, "
                                            "which ends {and_end_short_by} too small: divide by what is left.",
                 both ? "{lost_to_quilting} and then {lost_in_the_wash}" : share);
        sheet_point(sheet, side, sentence);
    }
}

/* The size to make; where only the wash is allowed for, that is said with it. */
static const char *make_sentence(json_t *side)
{
    if (any_of(side, "lost_to_quilting"))
        return "Make the {side} {make_finished} finished ({make_unfinished} unfinished, with a seam allowance of "
               "{seam_allowance}), to end at {wanted_finished} finished.";
    return "Make the {side} {make_finished} finished ({make_unfinished} unfinished, with a seam allowance of "
           "{seam_allowance}), to end at {wanted_finished} finished, with NOTHING allowed for quilting: add it "
           "(--quilting), or this will come out too small.";
}

/* An easy mark above what a quilt made as told measures would fail a good quilt. */
static const char *quilted_sentence(json_t *side)
{
    return json_is_true(json_object_get(side, "easy_mark_holds"))
               ? "The {side} should measure {quilted_as_made}, and must measure {quilted_at_least} or more "
                 "({quilted_raw_at_least} from raw edge to raw edge): {quilted_in_practice} is easy to measure by."
               : "The {side} should measure {quilted_as_made}, and must measure {quilted_at_least} or more "
                 "({quilted_raw_at_least} from raw edge to raw edge, with a seam allowance of {seam_allowance}).";
}

static void show_make(struct sheet *sheet, json_t *answer)
{
    json_t *sides = json_object_get(answer, "make");
    sheet_say(sheet, answer, "Before quilting and washing:");
    for (size_t i = 0; i < json_array_size(sides); i++)
        sheet_point(sheet, json_array_get(sides, i), make_sentence(json_array_get(sides, i)));
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Check 1, quilted and not yet washed, finished, that is between the lines where the "
                             "binding will be sewn:");
    for (size_t i = 0; i < json_array_size(sides); i++)
        sheet_point(sheet, json_array_get(sides, i), quilted_sentence(json_array_get(sides, i)));
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Check 2, washed, finished, that is between the lines where the binding is sewn:");
    show_each_point(sheet, answer, "make", "The {side} comes out at {then_ends_at}.");
    sheet_gap(sheet);
    show_shares(sheet, sides);
    show_shortfalls(sheet, sides);
}

static void show_becomes(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "The quilt as made becomes (all sizes are finished ones):");
    json_t *sides = json_object_get(answer, "becomes");
    for (size_t i = 0; i < json_array_size(sides); i++)
        sheet_point(sheet, json_array_get(sides, i),
                    any_of(json_array_get(sides, i), "lost_to_quilting")
                        ? "The {side}, made {made_finished}, is {quilted} when quilted and {washed} when washed: in "
                          "all it {in_words}."
                        : "The {side}, made {made_finished}, is {quilted} when quilted if quilting takes nothing, "
                          "which is unlikely, and {washed} when washed: in all it {in_words}.");
    sheet_gap(sheet);
    show_shares(sheet, json_object_get(answer, "becomes"));
}

/* Which of two shares was used, and why the other was not. */
static const char *governing_sentence(json_t *answer)
{
    json_t *governing = json_object_get(answer, "governing");
    if (says(governing, "source", "both alike"))
        return "In the wash fabric and batting lose the same share, {governing.share}; it was used once, not twice.";
    if (json_is_true(json_object_get(governing, "larger")))
        return "For the wash the larger share ({governing.source}, {governing.share}) was used, not the sum of both; "
               "this is a rule of thumb.";
    return "For the wash the share of {governing.source} ({governing.share}) was used, not the sum of both; this is a "
           "rule of thumb.";
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
        sheet_say(sheet, answer, governing_sentence(answer));
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
        sheet_point(sheet, rows, "For all to meet even at worst, a seam may be off by {seam_error_allowed_at_worst}.");
    else
        sheet_point(sheet, rows, "At worst the cuts alone keep them from meeting, however exact the seams.");
    if (has(rows, "seam_error_for_nineteen_in_twenty"))
        sheet_point(sheet, rows, "For nineteen in twenty to meet at the last seam, a seam may be off by "
                                 "{seam_error_for_nineteen_in_twenty}.");
    else if (has(rows, "seam_error_for_two_in_three"))
        sheet_point(sheet, rows, "The cuts alone make more than one in twenty miss at the last seam, however exact the "
                                 "seams.");
    else
        sheet_point(sheet, rows, "The cuts alone make more than one in three miss at the last seam, however exact the "
                                 "seams.");
}

/* From where on chance makes seams miss; two seams at once where it soon makes many of them. */
static const char *chance_sentence(json_t *rows)
{
    if (has(rows, "one_in_three_misses_from_seam"))
        return "By chance, from seam {one_in_twenty_misses_from_seam} on about one in twenty misses, or more; by seam "
               "{one_in_three_misses_from_seam} about one in three.";
    return has(rows, "one_in_twenty_misses_from_seam")
               ? "By chance, from seam {one_in_twenty_misses_from_seam} on about one in twenty misses, or more."
               : "By chance, at least about nineteen in twenty meet at every seam.";
}

static void show_rows(struct sheet *sheet, json_t *rows)
{
    sheet_gap(sheet);
    sheet_say(sheet, rows, "Neighbouring rows, laid edge to edge at one end, {seams:seam} in each:");
    sheet_point(sheet, rows, "At the last seam they are at most {apart_at_worst} apart, even at worst; about two in "
                             "three are within {apart_as_chance_has_it}. Seams within {meet_within} of each other "
                             "count as meeting.");
    sheet_point(sheet, rows, has(rows, "first_seam_that_may_miss")
                                 ? "At worst seam {first_seam_that_may_miss} is the first to miss."
                                 : "All seams meet, even at worst.");
    if (has(rows, "first_seam_that_may_miss"))
        sheet_point(sheet, rows, chance_sentence(rows));
    show_allowed(sheet, rows);
    if (json_integer_value(json_object_get(rows, "seams")) % 2 != 0 &&
        json_integer_value(json_object_get(rows, "seams")) > 1)
        sheet_point(sheet, rows, "Pinned at the middle seam and eased from there, only half as many seams lie "
                                 "between.");
}

static bool any_error(json_t *answer, const char *member)
{
    return json_integer_value(part(answer, member, "ticks")) > 0;
}

void show_accuracy(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, any_error(answer, "error_of_a_seam")
                                 ? "Each seam takes {error_of_a_seam} too much or too little in all (half of that on "
                                   "each of its two allowances)."
                                 : "Seams are taken to be exact.");
    sheet_say(sheet, answer, any_error(answer, "error_of_a_cut")
                                 ? "Each cut edge lies {error_of_a_cut} beside its line, and every piece has two."
                                 : "Cuts are taken to be exact.");
    sheet_gap(sheet);
    sheet_say(sheet, answer, "From raw edge to raw edge:");
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
