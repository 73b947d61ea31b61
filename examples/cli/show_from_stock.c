/* show_from_stock.c - what can be made, idea by idea.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

#include "look.h"
#include "sheet.h"

static int64_t count_of(json_t *object, const char *member)
{
    return json_integer_value(json_object_get(object, member));
}

static bool is_square(json_t *idea)
{
    return json_equal(json_object_get(idea, "block_finished_width"), json_object_get(idea, "block_finished_height"));
}

/* "1. Half-square triangles, two at a time", "2. Strip sets: 6 strips in a set, ...". */
static void show_name(struct sheet *sheet, json_t *idea)
{
    char words[300];
    const bool one = count_of(idea, "segments_in_a_block") == 1;
    if (says(idea, "made_of", "strip-sets"))
        snprintf(words, sizeof words, "{number}. Strip sets: {strips_in_a_set:strip} in a set, %s",
                 one ? "cut into squares of {segment_cut}, each of them a block"
                     : "{segments_in_a_block} segments, each cut {segment_cut}, side by side in a block");
    else if (says(idea, "unit", "rectangle"))
        snprintf(words, sizeof words, "{number}. Plain squares");
    else
        snprintf(words, sizeof words, "{number}. Unit: %s, made %s", called_unit(idea, "unit"),
                 called_way(idea, "method"));
    sheet_point(sheet, idea, words);
}

static void show_top(struct sheet *sheet, json_t *idea)
{
    sheet_under(sheet, idea,
                is_square(idea)
                    ? "Top {top_finished_width} by {top_finished_length} finished: {columns} across, {rows} down, "
                      "{blocks:block} of {block_finished_width} finished"
                    : "Top {top_finished_width} by {top_finished_length} finished: {columns} across, {rows} down, "
                      "{blocks:block} of {block_finished_width} by {block_finished_height} finished");
}

static const char *noun_of(json_t *idea)
{
    return json_is_true(json_object_get(idea, "strips")) ? "strip" : "piece";
}

static void show_source(struct sheet *sheet, json_t *idea)
{
    char words[300];
    json_t *from = json_object_get(idea, "from");
    const bool first = json_object_get(idea, "strips_from_each") != NULL;
    snprintf(words, sizeof words, "%s \"%.60s\"%s%s", first ? "First cut each of" : "From",
             json_string_value(json_array_get(from, 0)),
             json_array_size(from) > 1 ? " and others of that cut width, {there} in all, each as long as the shortest"
                                       : "",
             first ? " into {strips_from_each:strip} of {piece_cut} by {piece_length}: {there} in all" : "");
    sheet_under(sheet, idea, words);
}

static void show_use(struct sheet *sheet, json_t *idea)
{
    char words[300];
    const bool sets = says(idea, "made_of", "strip-sets");
    const bool more = count_of(idea, sets ? "segments_left" : "units_left") > 0;
    snprintf(words, sizeof words, "Takes {used:%s}%s; left over: %s%s%s", noun_of(idea),
             count_of(idea, "fabrics") > 1 ? ", dealt evenly to {fabrics} fabrics" : "",
             count_of(idea, "left") > 0 ? "{left}" : "none", !more ? "" : sets ? ", and {segments_left:segment}"
                                                                       : "; {units_left:more block} can be made",
             count_of(json_object_get(idea, "seen_in_the_top"), "ppm") > 0
                 ? ". The top shows about {seen_in_the_top} of all that cloth" : "");
    sheet_under(sheet, idea, words);
    if (json_is_true(json_object_get(idea, "nothing_to_spare")))
        sheet_under(sheet, idea, "The strips are just long enough: one that is a thread shorter gives a segment less");
}

static void show_next(struct sheet *sheet, json_t *idea)
{
    char words[300];
    json_t *next = json_object_get(idea, "next_larger");
    if (next == NULL)
        return;
    snprintf(words, sizeof words, "The next larger, {columns} by {rows} blocks, {top_finished_width} by "
             "{top_finished_length} finished, takes {more:more %s}", noun_of(idea));
    sheet_under(sheet, next, words);
}

static const char *order_in_words(json_t *answer)
{
    if (says(answer, "ranked_by", "least-left-over"))
        return "that which shows most of its cloth first, then the largest top";
    if (says(answer, "ranked_by", "largest-block"))
        return "the largest block first, then the largest top";
    return "the largest top first, then the least left over";
}

/* ---- patterns --------------------------------------------------------------------------------------------------- */

/* Where a fabric comes from, or what it would take. */
static void show_fabric(struct sheet *sheet, json_t *fabric)
{
    const bool cut = json_object_get(fabric, "from") != NULL;
    sheet_under(sheet, fabric, cut ? "{fabric}: from \"{from}\", takes {used}, leaves {left} whole"
                                   : "{fabric}: missing; off a bolt {usable_width} wide (usable) it takes {needs}");
}

static void show_sizes(struct sheet *sheet, json_t *list, const char *heading)
{
    json_t *size;
    size_t index;
    if (json_array_size(list) > 0)
        sheet_heading(sheet, heading);
    json_array_foreach(list, index, size) {
        json_t *fabric;
        size_t at;
        sheet_point(sheet, size, "{pattern}, {size}: {top_finished_width} by {top_finished_length} finished");
        json_array_foreach(json_object_get(size, "fabrics"), at, fabric)
            show_fabric(sheet, fabric);
    }
}

static void show_patterns(struct sheet *sheet, json_t *patterns)
{
    json_t *name;
    size_t index;
    sheet_title(sheet, patterns, "{sizes_that_can_be_made:size} of these patterns can be cut from this; "
                                 "for {sizes_that_lack_something:other size} something is missing.");
    show_sizes(sheet, json_object_get(patterns, "can_be_made"), "Can be cut from it, the largest first");
    show_sizes(sheet, json_object_get(patterns, "something_is_missing"),
               "Something is missing, those that lack the fewest fabrics first");
    json_array_foreach(json_object_get(patterns, "wrong_files"), index, name) {
        json_t *wrong = json_pack("{s:O}", "file", name);
        sheet_gap(sheet);
        sheet_point(sheet, wrong, "{file}, or a size in it, is wrong: muslin pattern tells what.");
        json_decref(wrong);
    }
    sheet_gap(sheet);
    sheet_point(sheet, patterns, "Each is by itself, and each row of the stock is one fabric. Binding and sleeve are "
                                 "counted, backing and batting are not, nor is shrinkage. A fabric that is said to be "
                                 "missing may still be pieced from several rows. --list 0 lists all.");
}

void show_from_stock(struct sheet *sheet, json_t *answer)
{
    if (json_object_get(answer, "patterns") != NULL) {
        show_patterns(sheet, json_object_get(answer, "patterns"));
        return;
    }
    char title[200];
    json_t *ideas = json_object_get(answer, "ideas");
    if (count_of(answer, "ideas_found") == 0) {
        sheet_say(sheet, answer, "Nothing: there is too little, or it is too small, for any block that is tried.");
        return;
    }
    snprintf(title, sizeof title, "{ideas_found:idea}, %s. Each is by itself: it may use up what another needs.",
             order_in_words(answer));
    sheet_title(sheet, answer, title);
    for (size_t i = 0; i < json_array_size(ideas); i++) {
        json_t *idea = json_array_get(ideas, i);
        show_name(sheet, idea);
        show_top(sheet, idea);
        show_source(sheet, idea);
        show_use(sheet, idea);
        show_next(sheet, idea);
    }
    sheet_gap(sheet);
    if (count_of(answer, "ideas_found") > (json_int_t)json_array_size(ideas))
        sheet_point(sheet, answer, "These are the first of {ideas_found}; --list 0 lists all.");
    if (!json_is_true(json_object_get(answer, "every_way")))
        sheet_point(sheet, answer, "Of each kind of block the best way and size is listed; --all lists every one.");
    sheet_point(sheet, answer, "Tops are reckoned without borders, at seams of {seam_allowance} on each edge, with "
                               "nothing for shrinkage or mistakes. What to cut and sew: muslin plan for strip sets, "
                               "muslin unit for units. Sew a test block before you cut it all.");
}
