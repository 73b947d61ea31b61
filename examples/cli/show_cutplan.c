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

/* Rows of the list that are of this kind. */
static bool is_wanted(json_t *answer, const char *kind)
{
    json_t *rows = json_object_get(answer, "list");
    for (size_t i = 0; i < json_array_size(rows); i++)
        if (says(json_array_get(rows, i), "kind", kind))
            return true;
    return false;
}

/* First cuts run along stock only where every piece may lie either way. */
static bool may_be_cut_along(json_t *answer)
{
    json_t *rows = json_object_get(answer, "list");
    for (size_t i = 0; i < json_array_size(rows); i++) {
        json_t *row = json_array_get(rows, i);
        if (!is_true(row, "square") && !is_true(row, "may_turn") && !says(row, "kind", "joined"))
            return false;
    }
    return says(answer, "print", "none");
}

/* Adds to a list of what stands in a sentence, after "; ". */
static void add_words(char *list, size_t cap, const char *words)
{
    size_t used = strlen(list);
    snprintf(list + used, cap - used, "%s%s", used == 0 ? "" : "; ", words);
}

/* What plans of two steps leave out. */
static void list_left_out(json_t *answer, char *list, size_t cap)
{
    const bool stock = says(answer, "from", "stock");
    if (!is_true(answer, "stacked"))
        add_words(list, cap, "pieces stacked one above the other in a strip (--stacked looks at those)");
    if (is_wanted(answer, "joined"))
        add_words(list, cap, stock ? "strips to join that are not as long as the stock lets them be"
                                   : "strips to join that do not go right across the cloth, but for the last");
    if (stock && !may_be_cut_along(answer))
        add_words(list, cap, "first cuts along the stock, since some pieces may not turn");
    if (is_true(answer, "folded"))
        add_words(list, cap, "cloth in a single layer");
}

/* What is meant by two steps, and what such plans leave out. */
static void show_two_steps(struct sheet *sheet, json_t *answer)
{
    const bool stock = says(answer, "from", "stock");
    const bool panels = !stock && is_wanted(answer, "lengthwise") && !is_true(answer, "no_panels");
    char left_out[400] = "";
    char words[900];
    list_left_out(answer, left_out, sizeof left_out);
    snprintf(words, sizeof words, "Two steps: first strips %s%s; then pieces side by side from each strip%s%s%s.%s%s%s",
             stock ? "from edge to edge, all one way in each piece of stock"
                   : is_true(answer, "folded") ? "right across the folded cloth" : "right across the cloth",
             panels ? ", or panels from which long pieces are slit" : "",
             is_true(answer, "own_strips") ? ", each size from strips of its own" : "",
             is_true(answer, "one_height") ? ", all of them as high as it is" : "",
             is_true(answer, "stacked") ? "; of those some are cut once more, into pieces of one width one above the "
                                          "other" : "",
             left_out[0] != '\0' ? " Not looked at, and perhaps less: " : "", left_out, left_out[0] != '\0' ? "." : "");
    sheet_point(sheet, answer, words);
}

static int64_t saved_in_the_shop(json_t *answer)
{
    return number(json_object_get(answer, "own_strips_to_buy"), "buy") - number(answer, "buy");
}

/* Slit pieces of two sizes share a panel: nobody would cut each size from a panel of its own. */
static void show_saving(struct sheet *sheet, json_t *answer)
{
    if (number(answer, "saved") <= 0 || number(answer, "panels") > 0 || is_true(answer, "own_strips"))
        return;
    sheet_point(sheet, answer, number(answer, "trims") > 0
                                   ? "With each size on its own strips it would be {each_size_on_its_own_strips}: this "
                                     "plan saves {saved} and has {trims:trim}."
                                   : "With each size on its own strips it would be {each_size_on_its_own_strips}: this "
                                     "plan saves {saved}.");
    sheet_point(sheet, answer, saved_in_the_shop(answer) > 0
                                   ? "The shop would cut {own_strips_to_buy.buy} for those, {buy} for this plan. "
                                     "--own-strips cuts each size so."
                                   : "The shop cuts {buy} for either: --own-strips, each size on its own strips, is "
                                     "the plainer plan.");
}

static void show_bound_of_cloth(struct sheet *sheet, json_t *answer)
{
    if (is_true(answer, "certainly_the_least"))
        sheet_point(sheet, answer, "No plan that is cut in two steps like this one needs less than {cloth_length}: "
                                   "that is proven.");
    else
        sheet_point(sheet, answer, "No plan that is cut in two steps like this one needs less than "
                                   "{no_plan_needs_less_than}: this one is at most {more_than_that} longer than the "
                                   "best.");
    show_two_steps(sheet, answer);
    show_saving(sheet, answer);
}

/* Stock that costs 1 each is counted. */
static bool is_counted(json_t *answer)
{
    json_t *rows = json_object_get(answer, "stock");
    for (size_t i = 0; i < json_array_size(rows); i++)
        if (number(json_array_get(rows, i), "cost_of_each") != 1)
            return false;
    return true;
}

static void show_bound_of_stock(struct sheet *sheet, json_t *answer)
{
    const bool counted = is_counted(answer);
    if (is_true(answer, "certainly_the_least"))
        sheet_point(sheet, answer, counted ? "No plan that is cut in two steps like this one uses fewer than "
                                             "{cost:piece} of stock: that is proven."
                                           : "At what you said each costs, this comes to {cost}. No plan that is cut "
                                             "in two steps like this one costs less: that is proven.");
    else
        sheet_point(sheet, answer, counted ? "No plan that is cut in two steps like this one uses fewer than "
                                             "{no_plan_costs_less_than:piece} of stock."
                                           : "At what you said each costs, this comes to {cost}. No plan that is cut "
                                             "in two steps like this one costs less than {no_plan_costs_less_than}.");
    show_two_steps(sheet, answer);
}

/* ---- what is wanted --------------------------------------------------------------------------------------------- */

static bool is_exact(json_t *object, const char *member)
{
    return !json_is_false(json_object_get(json_object_get(object, member), "exact"));
}

static const char *size_template(json_t *row)
{
    if (!is_exact(row, "cut_across") || !is_exact(row, "cut_along"))
        return "{as_written}";
    if (is_true(row, "square"))
        return "{wanted:square} of {cut_across}";
    if (says(row, "kind", "lengthwise"))
        return "{wanted} of {cut_across} x {cut_along}, the longer side along the cloth";
    if (says(row, "kind", "joined"))
        return number(row, "wanted") == 1 ? "a strip of {cut_across} x {cut_along} in all, joined"
                                          : "{wanted:strip} of {cut_across} x {cut_along} in all, joined";
    return is_true(row, "may_turn") ? "{wanted} of {cut_across} x {cut_along}, may lie turned"
                                    : "{wanted} of {cut_across} x {cut_along}";
}

char *cutplan_piece_in_words(json_t *row)
{
    char words[200];
    snprintf(words, sizeof words, "{label}: %s", size_template(row));
    return sheet_sentence(row, words);
}

/* A strip of which the join takes more than half adds so little that one can do without it. */
static void show_joins(struct sheet *sheet, json_t *answer, json_t *row)
{
    char words[400];
    snprintf(words, sizeof words, "{strips_to_join:strip}, {strips_together} together: {joins:%s join} take "
             "{loss_per_join} each", json_string_value(json_object_get(answer, "join")));
    if (json_object_get(row, "joins") == NULL)
        return;
    sheet_under(sheet, row, number(row, "joins") == 1
                                ? "{strips_to_join:strip}, {strips_together} together: the join takes {loss_per_join}"
                                : words);
    if (json_object_get(row, "shortest_strip") != NULL)
        sheet_under(sheet, row, "The strip of {shortest_strip} adds only {shortest_strip_adds}, the join takes the "
                                "rest: leave it out if {joined_without_it} will do");
}

static void show_list(struct sheet *sheet, json_t *answer)
{
    json_t *rows = json_object_get(answer, "list");
    sheet_heading(sheet, "Pieces (cut sizes, seams included; across the cloth x along it)");
    for (size_t i = 0; i < json_array_size(rows); i++) {
        json_t *row = json_array_get(rows, i);
        char words[200];
        snprintf(words, sizeof words, "{label}: %s%s", size_template(row),
                 number(row, "missing") > 0 ? "; {missing} missing" : "");
        sheet_point(sheet, row, words);
        show_joins(sheet, answer, row);
    }
}

static void show_stock(struct sheet *sheet, json_t *answer)
{
    json_t *rows = json_object_get(answer, "stock");
    if (json_array_size(rows) == 0)
        return;
    sheet_heading(sheet, "Stock (across the cloth x along it)");
    for (size_t i = 0; i < json_array_size(rows); i++) {
        json_t *row = json_array_get(rows, i);
        sheet_point(sheet, row, json_object_get(row, "there") != NULL
                                    ? "{there} of {width} x {length}: {used} cut into, {whole} left whole"
                                    : "{width} x {length}: {used} cut into");
    }
}

/* ---- strip by strip --------------------------------------------------------------------------------------------- */

/* Of a stack: what lies on the strip's lower edge is cut to its height first, then what lies on that, and so on. */
static const char *stack_template(json_t *place)
{
    if (number(place, "y") == 0)
        return "{pieces} {label}: cross-cut at {cut_across}, then cut each to {cut_along} from its lower edge";
    return is_true(place, "trimmed") ? "{pieces} {label}: cut from what is left of those, at {cut_along}"
                                     : "{pieces} {label}: what is left of those, {cut_across} x {cut_along}";
}

static const char *name_template(json_t *place, bool slit)
{
    if (is_true(place, "joined"))
        return "{pieces:strip} to join for {label}: {cut_across} long";
    if (slit)
        return "{pieces} {label}: slit {cut_across} wide";
    if (is_true(place, "square"))
        return "{pieces:square} {label}: cross-cut at {cut_across}";
    return is_true(place, "turned") ? "{pieces} {label}, turned: cross-cut at {cut_across}"
                                    : "{pieces} {label}: cross-cut at {cut_across}";
}

static const char *trim_template(json_t *place, bool slit)
{
    if (!is_true(place, "trimmed"))
        return "";
    if (slit)
        return ", trim the length from {trimmed_from} to {cut_along}";
    return is_true(place, "joined") ? ", trim the width from {trimmed_from} to {cut_along}"
                                    : ", trim the height from {trimmed_from} to {cut_along}";
}

/* Of folded cloth what does not go round the fold comes twice. */
static void show_pieces(struct sheet *sheet, json_t *strip, bool folded)
{
    json_t *places = json_object_get(strip, "places");
    for (size_t i = 0; i < json_array_size(places); i++) {
        json_t *place = json_array_get(places, i);
        char words[200];
        const bool slit = says(strip, "kind", "slit");
        const bool stacked = is_true(place, "in_a_stack");
        snprintf(words, sizeof words, "%s%s%s", folded && !is_true(place, "round_the_fold") ? "in each layer " : "",
                 stacked ? stack_template(place) : name_template(place, slit),
                 stacked ? "" : trim_template(place, slit));
        sheet_under(sheet, place, words);
    }
}

static const char *within_template(bool one, bool of_stock, bool of_several)
{
    if (of_several)
        return one ? "No. {number}, from each of no. {within_number}: one strip cut {strip_cut} wide:"
                   : "No. {number}, from each of no. {within_number}: {times} strips cut {strip_cut} wide, from each:";
    if (of_stock)
        return one ? "No. {number}, from no. {within_number}: one strip cut {strip_cut} wide:"
                   : "No. {number}, from no. {within_number}: {times} strips cut {strip_cut} wide, from each:";
    return one ? "No. {number}, across the rest of no. {within_number}: one strip cut {strip_cut} wide:"
               : "No. {number}, across the rest of no. {within_number}: {times} strips cut {strip_cut} wide, from "
                 "each:";
}

/* Stock by its size: what is written of it says which way its strips run. */
static const char *stock_template(json_t *strip)
{
    return is_true(strip, "cut_along_the_length")
               ? "No. {number}: {times:piece} of stock, {stock_across} across x {stock_along} along. First cuts along "
                 "the cloth, with the selvage: strips {long} long."
               : "No. {number}: {times:piece} of stock, {stock_across} across x {stock_along} along. First cuts across "
                 "the cloth: strips {long} long.";
}

static const char *strip_template(json_t *strip, json_t *holder)
{
    const bool one = number(strip, "times") == 1;
    if (says(strip, "kind", "panel"))
        return one ? "No. {number}: a panel {strip_cut} long, cut right across the cloth."
                   : "No. {number}: {times} panels {strip_cut} long, cut right across the cloth.";
    if (says(strip, "kind", "slit"))
        return number(holder, "times") == 1
                   ? "No. {number}, slit along the cloth from the left edge of no. {within_number}:"
                   : "No. {number}, slit along the cloth from the left edge of each of no. {within_number}:";
    if (says(strip, "kind", "stock"))
        return stock_template(strip);
    if (says(strip, "kind", "within"))
        return within_template(one, says(holder, "kind", "stock"), number(holder, "times") > 1);
    return one ? "No. {number}: one strip cut {strip_cut} wide:"
               : "No. {number}: {times} strips cut {strip_cut} wide, from each:";
}

/* What comes before the first strip: selvages, folds, squared ends. */
static void show_preparing(struct sheet *sheet, json_t *answer)
{
    const bool stock = says(answer, "from", "stock");
    const bool folded = is_true(answer, "folded");
    if (stock)
        sheet_point(sheet, answer, number(answer, "straightening") > 0
                                       ? "First trim off selvages and square each piece of stock: {straightening} of "
                                         "its length are counted for that."
                                       : "First trim off selvages and square each piece of stock: nothing is counted "
                                         "for that, the sizes above must be there afterwards.");
    else
        sheet_point(sheet, answer, number(answer, "straightening") > 0
                                       ? "First fold the cloth lengthwise, selvage on selvage, so that the fold hangs "
                                         "straight, and straighten its end square to the fold: {straightening} are "
                                         "counted for that."
                                       : "First fold the cloth lengthwise, selvage on selvage, so that the fold hangs "
                                         "straight, and straighten its end square to the fold; nothing is counted for "
                                         "that.");
    if (number(answer, "panels") > 0)
        sheet_point(sheet, answer, "Panels: trim both selvages off before you slit. Fold the panel end on end until "
                                   "your ruler reaches, edges exactly on each other, and slit along the trimmed edge.");
    if (folded)
        sheet_point(sheet, answer, "Cut each strip through both layers. Trim the selvages off and cross-cut from that "
                                   "end; where you come to the fold, slit it open just on the crease. Both layers lie "
                                   "the same way along the cloth, so a print that runs one way stays upright.");
    else if (!stock)
        sheet_point(sheet, answer, "Cut strips through both layers, square to the fold. Trim the selvages off, then "
                                   "open each strip flat and cross-cut it from its left end, in the order said.");
    if (number(answer, "end_loss") > 0)
        sheet_point(sheet, answer, "Square the left end of each strip before you cross-cut it: {left_end} come off "
                                   "there; {right_end} are reckoned for its right end.");
}

static void show_strips(struct sheet *sheet, json_t *answer)
{
    json_t *strips = json_object_get(answer, "strips_in_order");
    sheet_heading(sheet, "Cutting, in this order");
    show_preparing(sheet, answer);
    for (size_t i = 0; i < json_array_size(strips); i++) {
        json_t *strip = json_array_get(strips, i);
        json_t *within = json_object_get(strip, "within_number");
        json_t *holder = json_array_get(strips, (size_t)json_integer_value(within) - 1);
        sheet_point(sheet, strip, strip_template(strip, holder));
        show_pieces(sheet, strip, is_true(answer, "folded"));
    }
}

/* ---- the rest --------------------------------------------------------------------------------------------------- */

static void show_left_over(struct sheet *sheet, json_t *answer)
{
    json_t *rests = json_object_get(answer, "left_over");
    if (json_array_size(rests) == 0)
        return;
    sheet_heading(sheet, "Left over (across the cloth x along it)");
    for (size_t i = 0; i < json_array_size(rests); i++) {
        json_t *rest = json_array_get(rests, i);
        sheet_point(sheet, rest, number(rest, "pieces") == 1
                                     ? "{across} x {along}, of no. {of_strip_number}"
                                     : "{pieces} of {across} x {along}, of no. {of_strip_number}");
    }
    sheet_point(sheet, answer, "Listed is what is at least {left_over_listed_from} both ways; what is trimmed off "
                               "pieces is not.");
}

/* Cloth and stock must be as wide as the fullest strip. */
static void show_least_cloth(struct sheet *sheet, json_t *answer)
{
    json_t *rows = json_object_get(answer, "stock");
    if (json_object_get(answer, "narrowest_as_cut") != NULL)
        sheet_point(sheet, answer,
                    number(answer, "narrowest_as_cut") < number(answer, "usable_width")
                        ? "Measure your cloth: cut like this, {narrowest_as_cut} usable is the least width."
                        : "Measure your cloth: cut like this, {narrowest_as_cut} usable is the least width, and "
                          "nothing is to spare across. Give --usable less for some room at the ends of strips.");
    for (size_t i = 0; i < json_array_size(rows); i++) {
        json_t *row = json_array_get(rows, i);
        const bool slack = number(row, "least_width") < number(row, "width") &&
                           number(row, "least_length") < number(row, "length");
        if (number(row, "used") > 0)
            sheet_point(sheet, row,
                        slack ? "Measure your stock: of that said to be {width} x {length}, {least_width} x "
                                "{least_length} are needed, square."
                              : "Measure your stock: of that said to be {width} x {length}, {least_width} x "
                                "{least_length} are needed, square: nothing to spare. Few pieces are cut so exactly; "
                                "give --stock the size that is left when they are squared.");
    }
}

static void show_cautions(struct sheet *sheet, json_t *answer)
{
    const bool losses = number(answer, "end_loss") > 0 || number(answer, "straightening") > 0;
    sheet_heading(sheet, "Before you cut");
    show_shop_length(sheet, answer);
    show_least_cloth(sheet, answer);
    sheet_point(sheet, answer, losses ? "Sizes are cut sizes, with their seams. Shrinkage is not counted: wash first, "
                                        "then measure."
                                      : "Sizes are cut sizes, with their seams. Nothing is allowed for squaring up or "
                                        "for shrinkage: wash first, then measure.");
    sheet_point(sheet, answer, "Cut a test block first: a size that is wrong is wrong in every piece.");
    sheet_point(sheet, answer, "Label the pieces with their letters as you cut them.");
    sheet_point(sheet, answer, "A rotary cutter is very sharp: cut away from yourself, keep the fingers on the ruler, "
                               "and close the blade whenever you lay it down.");
}

static const char *first_sentence(json_t *answer)
{
    if (says(answer, "from", "stock"))
        return "{pieces:piece} from {pieces_of_stock:piece} of stock: {strips:strip}, {cuts:cut}.";
    return number(answer, "panels") > 0
               ? "{pieces:piece} take {cloth_length} of cloth {usable_width} wide (usable), off the bolt: "
                 "{panels:panel} and {strips:strip}, {cuts:cut}."
               : "{pieces:piece} take {cloth_length} of cloth {usable_width} wide (usable), off the bolt: "
                 "{strips:strip}, {cuts:cut}.";
}

void show_cutplan(struct sheet *sheet, json_t *answer)
{
    if (number(answer, "pieces") == 0 && number(answer, "missing") == 0) {
        sheet_say(sheet, answer, "Nothing is wanted, and nothing is needed.");
        return;
    }
    sheet_say(sheet, answer, first_sentence(answer));
    if (says(answer, "from", "stock"))
        show_bound_of_stock(sheet, answer);
    else
        show_bound_of_cloth(sheet, answer);
    show_end(sheet, answer);
    if (number(answer, "missing") > 0)
        sheet_point(sheet, answer, "The stock does not suffice for all: {missing:piece} missing. What is said of other "
                                   "plans is said of the pieces that are made.");
    show_list(sheet, answer);
    show_stock(sheet, answer);
    show_strips(sheet, answer);
    show_left_over(sheet, answer);
    show_cautions(sheet, answer);
}
