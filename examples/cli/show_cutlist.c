/* show_cutlist.c - a cut list as one cuts it, and what it could be cut from instead.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

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

static bool is_true(json_t *object, const char *member)
{
    return json_is_true(json_object_get(object, member));
}

static bool ticks_alike(json_t *object, const char *one, const char *other)
{
    return json_equal(json_object_get(json_object_get(object, one), "ticks"),
                      json_object_get(json_object_get(object, other), "ticks"));
}

/* ---- what to buy ------------------------------------------------------------------------------------------------ */

void show_shop_length(struct sheet *sheet, json_t *answer)
{
    if (!has(answer, "buy"))
        return;
    if (has(answer, "buy_rather"))
        sheet_point(sheet, answer, "Buy {buy} at the least: shops cut {buy_in_steps_of} at a time, and that leaves "
                                   "nothing to spare. {buy_rather} is safer.");
    else
        sheet_point(sheet, answer, "Buy {buy}, rounded up to what shops cut ({buy_in_steps_of} at a time): "
                                   "{buy_leaves} to spare.");
}

/* ---- sizes and strips ------------------------------------------------------------------------------------------- */

static const char *size_template(json_t *size, bool stock)
{
    if (!some(size, "strips"))
        return "none wanted, cut {cut_across} by {cut_along}";
    if (!stock)
        return "{pieces:piece} cut {cut_across} by {cut_along}: cut {strips:strip} {strip_cut} wide, and from each up "
               "to {pieces_from_each_strip:piece} {piece_cut} long";
    return "{pieces:piece} cut {cut_across} by {cut_along}: {strips:strip} cut {strip_cut} wide, and from each up to "
           "{pieces_from_each_strip:piece} {piece_cut} long";
}

/* "3 strips from no. 1", or of several that are cut alike, "7 strips from each of no. 1 to 11". */
static char *part_sentence(json_t *one)
{
    if (json_equal(json_object_get(one, "first_stock"), json_object_get(one, "last_stock")))
        return sheet_sentence(one, "{strips:strip} from no. {first_stock}");
    return sheet_sentence(one, "{strips:strip} from each of no. {first_stock} to {last_stock}");
}

/* "cut 3 strips from no. 1, 1 strip from no. 2": a row has three parts at most. */
static void show_parts(struct sheet *sheet, json_t *parts)
{
    char sentence[400] = "cut ";
    for (size_t i = 0; i < json_array_size(parts); i++) {
        char *words = part_sentence(json_array_get(parts, i));
        size_t used = strlen(sentence);
        snprintf(sentence + used, sizeof sentence - used, "%s%.100s", i == 0 ? "" : ", ", words);
        free(words);
    }
    if (json_array_size(parts) != 0)
        sheet_under(sheet, NULL, sentence);
}

static void show_sizes(struct sheet *sheet, json_t *sizes, bool stock)
{
    for (size_t i = 0; i < json_array_size(sizes); i++) {
        json_t *size = json_array_get(sizes, i);
        sheet_point(sheet, size, size_template(size, stock));
        show_parts(sheet, json_object_get(size, "from"));
        if (is_true(size, "pieces_lie_turned"))
            sheet_under(sheet, size, "these lie turned a quarter: {cut_across} along the cloth");
        if (some(size, "pieces_to_spare"))
            sheet_under(sheet, size, "the last strip could give {pieces_to_spare} more");
        if (stock && some(size, "strips") && !is_true(size, "strips_must_be_trimmed"))
            sheet_under(sheet, size, "the pre-cut has that width already: nothing to trim");
    }
}

/* ---- from yardage ----------------------------------------------------------------------------------------------- */

static const char *wider_template(json_t *size)
{
    if (is_true(size, "pieces_lie_turned") == is_true(size, "lay_turned"))
        return "{pieces:piece} cut {cut_across} by {cut_along}: {strips:strip} cut {strip_cut} wide, together "
               "{length_of_the_strips}";
    if (is_true(size, "lay_turned"))
        return "{pieces:piece} cut {cut_across} by {cut_along}, then not turned: {strips:strip} cut {strip_cut} wide, "
               "together {length_of_the_strips}";
    return "{pieces:piece} cut {cut_across} by {cut_along}, then turned a quarter: {strips:strip} cut {strip_cut} "
           "wide, together {length_of_the_strips}";
}

static void show_wider(struct sheet *sheet, json_t *wider)
{
    if (wider == NULL)
        return;
    sheet_point(sheet, wider, "At {usable_width} usable, {by} wider, {saves} less cloth would do:");
    json_t *sizes = json_object_get(wider, "sizes");
    for (size_t i = 0; i < json_array_size(sizes); i++)
        sheet_under(sheet, json_array_get(sizes, i), wider_template(json_array_get(sizes, i)));
}

static void show_yardage(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "{pieces:piece} take {cloth_length} of cloth {usable_width} wide (usable): "
                             "{strips:strip}.");
    sheet_heading(sheet, "Cutting, each size on its own strips across the cloth");
    show_sizes(sheet, json_object_get(answer, "sizes"), false);
    sheet_heading(sheet, "Before you cut");
    if (!has(answer, "cloth_in_hand"))
        show_shop_length(sheet, answer);
    sheet_point(sheet, answer, "Sew a test block from scraps first: a size that is wrong is wrong in every piece.");
    sheet_point(sheet, answer, some(answer, "end_loss") || some(answer, "straightening")
                                   ? "Sizes are cut sizes. {end_loss} is taken off each strip and {straightening} off "
                                     "the cloth; shrinkage is not counted."
                                   : "Sizes are cut sizes. Nothing is allowed for squaring up or for shrinkage.");
    if (some(answer, "pieces"))
        sheet_point(sheet, answer, json_equal(json_object_get(answer, "narrowest_as_cut"),
                                              json_object_get(answer, "usable_width"))
                                       ? "Measure your cloth: cut like this, {usable_width} usable is the least width, "
                                         "and there is nothing to spare."
                                       : "Measure your cloth: cut like this, {narrowest_as_cut} usable is the least "
                                         "width.");
    show_wider(sheet, json_object_get(answer, "less_cloth_if_wider"));
    sheet_point(sheet, answer, ticks_alike(answer, "area_bound", "cloth_length")
                                   ? "By area alone it would be {area_bound} as well: no plan needs less."
                                   : "By area alone it would be {area_bound}: no plan needs less, but that much is "
                                     "seldom enough. A plan that mixes sizes on a strip may need less than this one.");
}

static const char *hold_of_cloth(json_t *gives)
{
    if (!some(gives, "as_cut_may_be_narrower_by"))
        return "{left_over_of_the_last} of it is left over. Cut like this, it may be that much shorter, but no "
               "narrower.";
    return "{left_over_of_the_last} of it is left over. Cut like this, it may be that much shorter, or "
           "{as_cut_may_be_narrower_by} narrower.";
}

static void show_cloth_in_hand(struct sheet *sheet, json_t *answer)
{
    json_t *gives = json_object_get(answer, "in_hand_gives");
    if (!some(gives, "whole_lists")) {
        sheet_point(sheet, answer, "Your {cloth_in_hand} of cloth is not enough for the whole list.");
        return;
    }
    sheet_point(sheet, answer, "Your {cloth_in_hand} of cloth gives the whole list {in_hand_gives.whole_lists:time}.");
    if (json_integer_value(json_object_get(gives, "whole_lists")) > 1) {
        sheet_point(sheet, gives, "Cut all {whole_lists} together, size by size:");
        show_sizes(sheet, json_object_get(gives, "sizes"), false);
    }
    sheet_point(sheet, gives, hold_of_cloth(gives));
}

/* ---- from pieces of stock --------------------------------------------------------------------------------------- */

/* Strips lie along what is the width of other stock, and so their width is what is its length. */
static const char *hold_of_strips(bool shorter, bool narrower)
{
    if (shorter && narrower)
        return "Cut like this, each may be {as_cut_may_be_narrower_by} shorter, or {as_cut_may_be_shorter_by} "
               "narrower.";
    if (shorter)
        return "Cut like this, each may be {as_cut_may_be_narrower_by} shorter, but {stock_length} is the least width: "
               "nothing to spare.";
    if (narrower)
        return "Cut like this, each may be {as_cut_may_be_shorter_by} narrower, but {stock_width} is the least length: "
               "nothing to spare.";
    return "Cut like this, {stock_length} is the least width and {stock_width} the least length of each: nothing to "
           "spare.";
}

static const char *hold_of_stock(json_t *answer)
{
    bool narrower = some(answer, "as_cut_may_be_narrower_by");
    bool shorter = some(answer, "as_cut_may_be_shorter_by");
    if (says(answer, "from", "strips"))
        return hold_of_strips(narrower, shorter);
    if (narrower && shorter)
        return "Cut like this, each may be {as_cut_may_be_narrower_by} narrower, or {as_cut_may_be_shorter_by} "
               "shorter.";
    if (narrower)
        return "Cut like this, each may be {as_cut_may_be_narrower_by} narrower, but {stock_length} is the least "
               "length: nothing to spare.";
    if (shorter)
        return "Cut like this, each may be {as_cut_may_be_shorter_by} shorter, but {stock_width} is the least width: "
               "nothing to spare.";
    return "Cut like this, {stock_width} is the least width and {stock_length} the least length of each: nothing to "
           "spare.";
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
    if (some(answer, "left_over_of_the_last"))
        sheet_point(sheet, answer, says(answer, "from", "strips")
                                       ? "{left_over_of_the_last} of the width of the last one is left over."
                                       : "{left_over_of_the_last} of the length of the last one is left over.");
    if (some(answer, "pieces"))
        sheet_point(sheet, answer, hold_of_stock(answer));
    json_t *bound = json_object_get(answer, "area_bound");
    sheet_point(sheet, answer, json_equal(bound, json_object_get(answer, "stock_needed"))
                                   ? "By area alone it would be {area_bound} as well: no plan needs fewer."
                                   : "By area alone it would be {area_bound}: no plan needs fewer, but that is seldom "
                                     "enough. A plan that mixes sizes may need fewer than this one.");
    if (has(answer, "stock_in_hand"))
        sheet_point(sheet, answer, some(answer, "stock_missing")
                                       ? "You have {stock_in_hand}: {stock_missing} are missing."
                                       : "You have {stock_in_hand}: {stock_left} are left over.");
}

static void show_stock_in_hand(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, any(answer, "in_hand_gives", "whole_lists")
                                   ? "What you have gives the whole list {in_hand_gives.whole_lists:time}, when all "
                                     "are cut together, size by size."
                                   : "What you have is not enough for the whole list.");
    sheet_point(sheet, answer, "One list more needs {in_hand_gives.stock_for_one_more} more.");
}

/* What the warnings of these answers say, the sentences on widths and lengths have said. */
void show_cutlist(struct sheet *sheet, json_t *answer)
{
    bool yardage = says(answer, "from", "yardage");
    if (yardage)
        show_yardage(sheet, answer);
    else
        show_stock(sheet, answer);
    if (!has(answer, "in_hand_gives"))
        return;
    sheet_heading(sheet, "From what is in hand");
    if (yardage)
        show_cloth_in_hand(sheet, answer);
    else
        show_stock_in_hand(sheet, answer);
}

/* ---- one stock for another -------------------------------------------------------------------------------------- */

static const char *given_template(json_t *given)
{
    if (has(given, "cloth_length"))
        return "{cloth_length}, {fabrics:fabric}";
    if (json_equal(json_object_get(given, "of_each_fabric_at_least"), json_object_get(given, "of_each_fabric_at_most")))
        return "{needed} needed, {fabrics:different fabric}, {of_each_fabric_at_most} of each";
    return "{needed} needed, {fabrics:different fabric}, {of_each_fabric_at_least} or {of_each_fabric_at_most} of each";
}

/* To spare in the strips that are cut, and in what is left of the last piece of stock. */
static const char *spare_template(json_t *given)
{
    bool spare = some(given, "pieces_to_spare");
    if (some(given, "pieces_from_the_rest"))
        return spare ? "{name}: {takes}, {spare:piece} to spare, and {rest} from what is left of the last"
                     : "{name}: {takes}, {rest:piece} to spare, from what is left of the last";
    return spare ? "{name}: {takes}, {spare:piece} to spare" : "{name}: {takes}";
}

/* "name: what it takes", the first from one object and the second from another. */
static void show_pair(struct sheet *sheet, void show(struct sheet *, json_t *, const char *), json_t *named,
                      const char *name, json_t *given)
{
    char *first = sheet_sentence(named, name);
    char *second = sheet_sentence(given, given_template(given));
    json_t *both = json_pack("{s:s, s:s, s:O, s:O}", "name", first, "takes", second, "spare",
                             json_object_get(given, "pieces_to_spare"), "rest",
                             json_object_get(given, "pieces_from_the_rest"));
    show(sheet, both, spare_template(given));
    json_decref(both);
    free(first);
    free(second);
}

/* Where a length of cloth, or the width and length of a pre-cut, has nothing to spare. */
static void show_edge(struct sheet *sheet, json_t *named, json_t *given)
{
    if (has(given, "buy_rather"))
        sheet_under(sheet, given, "{buy} leaves nothing to spare: better buy {buy_rather}");
    else if (has(given, "buy"))
        sheet_under(sheet, given, "buy {buy}: {buy_leaves} to spare");
    bool width = !some(given, "may_be_narrower_by");
    bool length = has(given, "may_be_shorter_by") && !some(given, "may_be_shorter_by");
    if (width && length)
        sheet_under(sheet, named, "nothing to spare: {width} by {length} must be there in full, so measure first");
    else if (width)
        sheet_under(sheet, named, "nothing to spare: the {width} across must be there in full, so measure first");
    else if (length)
        sheet_under(sheet, named, says(named, "from", "strips")
                                      ? "nothing to spare: the strips must be {length} wide in full, so measure first"
                                      : "nothing to spare: the {length} along must be there in full, so measure first");
}

static const char *unfit_template(json_t *instead, bool yardage)
{
    if (!has(instead, "turned"))
        return yardage ? "yardage {width} wide (usable): too narrow for {does_not_fit}"
                       : "{from} of {width} by {length}: too small for {does_not_fit}";
    return yardage ? "yardage {width} wide (usable): too narrow for {does_not_fit} unless turned a quarter"
                   : "{from} of {width} by {length}: too small for {does_not_fit} unless turned a quarter";
}

static void show_turned(struct sheet *sheet, json_t *instead)
{
    json_t *turned = json_object_get(instead, "turned");
    if (turned == NULL)
        return;
    if (!is_true(instead, "the_print_lets_turn")) {
        sheet_under(sheet, instead, "and this print must not be turned");
        return;
    }
    show_pair(sheet, sheet_under, instead, "if turned a quarter", turned);
    show_edge(sheet, instead, turned);
}

/* What can be cut only turned is said as such in one sentence. */
static void show_only_turned(struct sheet *sheet, json_t *instead, bool yardage)
{
    json_t *turned = json_object_get(instead, "turned");
    show_pair(sheet, sheet_point, instead,
              yardage ? "yardage {width} wide (usable), only with pieces turned a quarter"
                      : "{from} of {width} by {length}, only with pieces turned a quarter", turned);
    show_edge(sheet, instead, turned);
}

static void show_instead(struct sheet *sheet, json_t *instead)
{
    bool yardage = says(instead, "from", "yardage");
    if (!is_true(instead, "possible") && has(instead, "turned") && is_true(instead, "the_print_lets_turn")) {
        show_only_turned(sheet, instead, yardage);
        return;
    }
    if (is_true(instead, "possible")) {
        show_pair(sheet, sheet_point, instead,
                  yardage ? "yardage {width} wide (usable)" : "{from} of {width} by {length}", instead);
        if (is_true(instead, "pieces_lie_turned"))
            sheet_under(sheet, instead, "with pieces turned a quarter");
        show_edge(sheet, instead, instead);
    } else {
        sheet_point(sheet, instead, unfit_template(instead, yardage));
    }
    show_turned(sheet, instead);
}

void show_substitute(struct sheet *sheet, json_t *answer)
{
    json_t *list = json_object_get(answer, "instead");
    sheet_say(sheet, answer, "The pieces come from any one of these:");
    sheet_gap(sheet);
    for (size_t i = 0; i < json_array_size(list); i++)
        show_instead(sheet, json_array_get(list, i));
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Each size is cut from its own strips, in the order of the list; nothing is allowed for "
                             "squaring up or shrinkage, and each piece of stock is taken from another print as long as "
                             "there is one. Pieces lie as they are listed, across by along; \"turn\" behind a size "
                             "lets it lie either way.");
}
