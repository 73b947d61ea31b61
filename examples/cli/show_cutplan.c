/* show_cutplan.c - a cutting plan in the order of the cuts.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "look.h"
#include "sheet.h"

static bool is_true(json_t *object, const char *member)
{
    return json_is_true(json_object_get(object, member));
}

static int64_t number(json_t *object, const char *member)
{
    json_t *value = json_object_get(object, member);
    json_t *ticks = json_object_get(value, "ticks");
    return (int64_t)json_integer_value(ticks != NULL ? ticks : value);
}

/* ---- how little can do ------------------------------------------------------------------------------------------ */

static void show_end(struct sheet *sheet, json_t *answer)
{
    if (says(answer, "search_ended_by", "interrupt"))
        sheet_point(sheet, answer, "You ended the search; this is the best plan up to then.");
    else if (says(answer, "search_ended_by", "work limit") && !is_true(answer, "certainly_the_least"))
        sheet_point(sheet, answer, "The search ended after {steps_of_the_search} steps. More of them (--work) may find "
                                   "a better plan, or prove that there is none.");
    else if (says(answer, "search_ended_by", "memory"))
        sheet_point(sheet, answer, "The search ran out of memory; this is the best plan up to then.");
}

static void show_bound_of_cloth(struct sheet *sheet, json_t *answer)
{
    if (is_true(answer, "certainly_the_least"))
        sheet_point(sheet, answer, "Cut in strips across the cloth like this, no plan needs less than {cloth_length}: "
                                   "that is proven.");
    else
        sheet_point(sheet, answer, "Cut in strips across the cloth like this, no plan needs less than "
                                   "{no_plan_needs_less_than}: this one is at most {more_than_that} longer than the "
                                   "best.");
    if (number(answer, "saved") > 0)
        sheet_point(sheet, answer, "With each size on its own strips it would be {each_size_on_its_own_strips}: this "
                                   "plan saves {saved}.");
}

static void show_bound_of_stock(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, is_true(answer, "certainly_the_least")
                                   ? "No plan of this kind costs less than {cost}: that is proven."
                                   : "No plan of this kind costs less than {no_plan_costs_less_than}; this one costs "
                                     "{cost}.");
}

/* ---- strip by strip --------------------------------------------------------------------------------------------- */

static const char *place_template(json_t *place)
{
    const bool trimmed = is_true(place, "trimmed");
    if (is_true(place, "joined"))
        return trimmed ? "{pieces:strip} to join for {label}: cut {cut_across} long, trim to {cut_along}"
                       : "{pieces:strip} to join for {label}: {cut_across} long";
    if (is_true(place, "turned"))
        return trimmed ? "{pieces} {label}, turned: cut {cut_across} across, trim to {cut_along}"
                       : "{pieces} {label}, turned: cut {cut_across} across";
    return trimmed ? "{pieces} {label}: cut {cut_across} across, trim to {cut_along}"
                   : "{pieces} {label}: cut {cut_across} across";
}

/* Of folded cloth what does not go round the fold comes twice. */
static void show_pieces(struct sheet *sheet, json_t *strip, bool folded)
{
    json_t *places = json_object_get(strip, "places");
    for (size_t i = 0; i < json_array_size(places); i++) {
        json_t *place = json_array_get(places, i);
        char words[200];
        snprintf(words, sizeof words, "%s%s", folded && !is_true(place, "round_the_fold") ? "in each layer " : "",
                 place_template(place));
        sheet_under(sheet, place, words);
    }
}

static const char *strip_template(json_t *strip)
{
    const bool one = number(strip, "times") == 1;
    if (says(strip, "kind", "panel"))
        return one ? "No. {number}: a panel {strip_cut} long, cut right across the cloth."
                   : "No. {number}: {times} panels {strip_cut} long, cut right across the cloth.";
    if (says(strip, "kind", "slit"))
        return "Slit along the cloth, at the left edge of no. {within_number}:";
    if (says(strip, "kind", "stock"))
        return is_true(strip, "cut_along_the_length")
                   ? "No. {number}: {times:piece} of stock row {stock_row}, first cuts along its length."
                   : "No. {number}: {times:piece} of stock row {stock_row}, first cuts across its width.";
    if (says(strip, "kind", "within"))
        return one ? "Across the rest of no. {within_number}, one strip cut {strip_cut} wide:"
                   : "Across the rest of no. {within_number}, {times} strips cut {strip_cut} wide, from each:";
    return one ? "No. {number}: one strip cut {strip_cut} wide:"
               : "No. {number}: {times} strips cut {strip_cut} wide, from each:";
}

static void show_strips(struct sheet *sheet, json_t *answer)
{
    json_t *strips = json_object_get(answer, "strips_in_order");
    sheet_heading(sheet, "Cutting, in this order");
    for (size_t i = 0; i < json_array_size(strips); i++) {
        json_t *strip = json_array_get(strips, i);
        sheet_point(sheet, strip, strip_template(strip));
        show_pieces(sheet, strip, is_true(answer, "folded"));
    }
}

/* ---- the rest --------------------------------------------------------------------------------------------------- */

static void show_list(struct sheet *sheet, json_t *answer)
{
    json_t *rows = json_object_get(answer, "list");
    sheet_heading(sheet, "Pieces (cut sizes, across the cloth by along it)");
    for (size_t i = 0; i < json_array_size(rows); i++) {
        json_t *row = json_array_get(rows, i);
        sheet_point(sheet, row, number(row, "missing") > 0 ? "{label}: {as_written}; {missing} missing"
                                                           : "{label}: {as_written}");
    }
}

static void show_left_over(struct sheet *sheet, json_t *answer)
{
    json_t *rests = json_object_get(answer, "left_over");
    if (json_array_size(rests) == 0)
        return;
    sheet_heading(sheet, "Left over (across the cloth by along it)");
    for (size_t i = 0; i < json_array_size(rests); i++) {
        json_t *rest = json_array_get(rests, i);
        sheet_point(sheet, rest, number(rest, "pieces") == 1
                                     ? "{across} by {along}, of no. {of_strip_number}"
                                     : "{pieces} of {across} by {along}, of no. {of_strip_number}");
    }
}

static void show_cautions(struct sheet *sheet, json_t *answer)
{
    const bool losses = number(answer, "end_loss") > 0 || number(answer, "straightening") > 0;
    sheet_heading(sheet, "Before you cut");
    show_shop_length(sheet, answer);
    sheet_point(sheet, answer, "Cut a test block first: a size that is wrong is wrong in every piece.");
    sheet_point(sheet, answer, "A rotary cutter is very sharp: cut away from yourself, keep the fingers on the ruler, "
                               "and close the blade whenever you lay it down.");
    sheet_point(sheet, answer, losses ? "Sizes are cut sizes. {end_loss} is taken off each strip and {straightening} "
                                        "once; shrinkage is not counted."
                                      : "Sizes are cut sizes. Nothing is allowed for squaring up or for shrinkage.");
    if (json_object_get(answer, "narrowest_as_cut") != NULL)
        sheet_point(sheet, answer, "Measure your cloth: cut like this, {narrowest_as_cut} usable is the least width.");
    sheet_point(sheet, answer, "Label the pieces with their letters as you cut them.");
}

void show_cutplan(struct sheet *sheet, json_t *answer)
{
    const bool stock = says(answer, "from", "stock");
    if (number(answer, "pieces") == 0 && number(answer, "missing") == 0) {
        sheet_say(sheet, answer, "Nothing is wanted, and nothing is needed.");
        return;
    }
    sheet_say(sheet, answer, stock ? "{pieces:piece} from {pieces_of_stock:piece} of stock: {strips:strip}, "
                                     "{cuts:cut}."
                                   : "{pieces:piece} take {cloth_length} of cloth {usable_width} wide (usable): "
                                     "{strips:strip}, {cuts:cut}.");
    if (stock)
        show_bound_of_stock(sheet, answer);
    else
        show_bound_of_cloth(sheet, answer);
    show_end(sheet, answer);
    if (is_true(answer, "folded"))
        sheet_point(sheet, answer, "Fold the cloth lengthwise, selvage on selvage, and cut both layers at once. The "
                                   "fold has to lie straight.");
    if (number(answer, "missing") > 0)
        sheet_point(sheet, answer, "The stock does not suffice for all: {missing:piece} missing.");
    show_list(sheet, answer);
    show_strips(sheet, answer);
    show_left_over(sheet, answer);
    show_cautions(sheet, answer);
}
