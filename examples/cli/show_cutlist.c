/* show_cutlist.c - a cut list as one cuts it, and what it could be cut from instead.
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

static const char *size_template(json_t *size, bool stock)
{
    if (!some(size, "strips"))
        return "none wanted, cut {cut_across} by {cut_along}";
    if (!stock)
        return "{pieces:piece} cut {cut_across} by {cut_along}: cut {strips:strip} {strip_cut} wide, and from each up "
               "to {pieces_from_each_strip:piece} {piece_cut} long";
    if (json_equal(json_object_get(size, "from_stock_number"), json_object_get(size, "to_stock_number")))
        return "{pieces:piece} cut {cut_across} by {cut_along}: {strips:strip} cut {strip_cut} wide, all from number "
               "{to_stock_number}, and from each up to {pieces_from_each_strip:piece} {piece_cut} long";
    return "{pieces:piece} cut {cut_across} by {cut_along}: {strips:strip} cut {strip_cut} wide, from number "
           "{from_stock_number} to number {to_stock_number}, and from each up to {pieces_from_each_strip:piece} "
           "{piece_cut} long";
}

static void show_sizes(struct sheet *sheet, json_t *sizes, bool stock)
{
    for (size_t i = 0; i < json_array_size(sizes); i++) {
        json_t *size = json_array_get(sizes, i);
        sheet_point(sheet, size, size_template(size, stock));
        if (json_is_true(json_object_get(size, "pieces_lie_turned")))
            sheet_under(sheet, size, "these lie turned a quarter: {cut_across} along the cloth");
        if (some(size, "pieces_to_spare"))
            sheet_under(sheet, size, "the last strip could give {pieces_to_spare} more");
        if (stock && some(size, "strips") && !json_is_true(json_object_get(size, "strips_must_be_trimmed")))
            sheet_under(sheet, size, "the pre-cut has that width already: nothing to trim");
    }
}

static void show_yardage(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "{pieces:piece} take {cloth_length} of cloth {usable_width} wide (usable): "
                             "{strips:strip}.");
    sheet_heading(sheet, "Cutting, each size on its own strips across the cloth");
    show_sizes(sheet, json_object_get(answer, "sizes"), false);
    sheet_heading(sheet, "Before you cut");
    sheet_point(sheet, answer, "Sew a test block from scraps first: a size that is wrong is wrong in every piece.");
    sheet_point(sheet, answer, some(answer, "end_loss") || some(answer, "straightening")
                                   ? "Sizes are cut sizes. {end_loss} is taken off each strip and {straightening} off "
                                     "the cloth; shrinkage is not counted."
                                   : "Sizes are cut sizes. Nothing is allowed for squaring up or for shrinkage.");
    sheet_point(sheet, answer, "Measure your cloth: this holds down to {narrowest_usable_width} usable, "
                               "{cloth_may_be_narrower_by} less.");
    if (has(answer, "less_cloth_if_wider_by"))
        sheet_point(sheet, answer, "Cloth {less_cloth_if_wider_by} wider would save a strip.");
    sheet_point(sheet, answer, "By area alone it would be {area_bound}: no plan needs less, but that much is seldom "
                               "enough. A plan that mixes sizes on a strip may need less than this one.");
}

static void show_stock(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "{pieces:piece} from {from} of {stock_width} by {stock_length}: {stock_needed} of them, "
                             "in {strips:strip}.");
    sheet_heading(sheet, "Cutting, each size on its own strips across the width");
    show_sizes(sheet, json_object_get(answer, "sizes"), true);
    sheet_heading(sheet, "Before you cut");
    sheet_point(sheet, answer, "Sew a test block from scraps first: a size that is wrong is wrong in every piece.");
    sheet_point(sheet, answer, "Sizes are cut sizes. Nothing is allowed for squaring up: give the size that is left.");
    sheet_point(sheet, answer, "{left_over_of_the_last} of the last one is left over.");
    sheet_point(sheet, answer, "Each may be {stock_may_be_narrower_by} narrower, or {stock_may_be_shorter_by} shorter, "
                               "before one more is needed.");
    sheet_point(sheet, answer, "By area alone it would be {area_bound}: no plan needs fewer, but that is seldom "
                               "enough. A plan that mixes sizes may need fewer than this one.");
    if (has(answer, "stock_in_hand"))
        sheet_point(sheet, answer, some(answer, "stock_missing")
                                       ? "You have {stock_in_hand}: {stock_missing} are missing."
                                       : "You have {stock_in_hand}: {stock_left} are left over.");
}

static void show_sets(struct sheet *sheet, json_t *answer, bool yardage)
{
    json_t *gives = json_object_get(answer, "in_hand_gives");
    if (gives == NULL)
        return;
    sheet_heading(sheet, "From what is in hand");
    if (yardage) {
        sheet_point(sheet, answer, "Your {cloth_in_hand} of cloth gives the whole list "
                                   "{in_hand_gives.whole_lists:time}.");
        if (some(gives, "whole_lists"))
            sheet_point(sheet, gives, "{left_over_of_the_last} of it is left over; so far it may be shorter by "
                                      "{may_be_shorter_by}, or narrower by {may_be_narrower_by}.");
        return;
    }
    sheet_point(sheet, answer, "Your {stock_in_hand} give the whole list {in_hand_gives.whole_lists:time}.");
    sheet_point(sheet, gives, "Once more needs {stock_for_one_more} more.");
}

void show_cutlist(struct sheet *sheet, json_t *answer)
{
    bool yardage = says(answer, "from", "yardage");
    if (yardage)
        show_yardage(sheet, answer);
    else
        show_stock(sheet, answer);
    show_sentences(sheet, json_object_get(answer, "warnings"));
    show_sets(sheet, answer, yardage);
}

/* ---- one stock for another -------------------------------------------------------------------------------------- */

static const char *instead_template(json_t *instead)
{
    bool yardage = says(instead, "from", "yardage");
    if (!json_is_true(json_object_get(instead, "possible")))
        return yardage ? "yardage {width} wide: too narrow for {does_not_fit}"
                       : "{from} of {width} by {length}: too small for {does_not_fit}";
    if (yardage)
        return "yardage {width} wide (usable): {cloth_length}, {fabrics:fabric}";
    if (json_equal(json_object_get(instead, "of_each_fabric_at_least"),
                   json_object_get(instead, "of_each_fabric_at_most")))
        return "{from} of {width} by {length}: {needed}, {fabrics:different fabric}, {of_each_fabric_at_most} of each";
    return "{from} of {width} by {length}: {needed}, {fabrics:different fabric}, {of_each_fabric_at_least} or "
           "{of_each_fabric_at_most} of each";
}

void show_substitute(struct sheet *sheet, json_t *answer)
{
    json_t *list = json_object_get(answer, "instead");
    sheet_say(sheet, answer, "The pieces come from any one of these:");
    sheet_gap(sheet);
    for (size_t i = 0; i < json_array_size(list); i++) {
        json_t *instead = json_array_get(list, i);
        sheet_point(sheet, instead, instead_template(instead));
        if (json_array_size(json_object_get(instead, "warnings")) > 0)
            sheet_under(sheet, instead, "this stands exactly on its edge: measure before you cut");
    }
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Each size is cut from its own strips, in the order of the list; nothing is allowed for "
                             "squaring up or shrinkage, and each piece of stock is taken from another print as long as "
                             "there is one.");
}
