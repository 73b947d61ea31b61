/* show.c - the general table of figures: every member of an answer under its own name.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

#include "look.h"
#include "sheet.h"

#define INDENT 2

/* Lengths and shares are objects with a "text". */
static bool is_figure(json_t *value)
{
    return !json_is_array(value) && (!json_is_object(value) || json_object_get(value, "text") != NULL);
}

static bool is_listed(const char *member)
{
    return strcmp(member, "command") != 0 && strcmp(member, "warnings") != 0;
}

static void write_label(struct sheet *sheet, const char *member)
{
    for (const char *c = member; *c != '\0'; c++)
        fputc(*c == '_' ? ' ' : *c, sheet->out);
}

/* "pieces" names the list; "piece 1" its first. */
static void write_label_of_one(struct sheet *sheet, const char *member)
{
    char one[80];
    snprintf(one, sizeof one, "%s", member);
    size_t length = strlen(one);
    if (length > 0 && one[length - 1] == 's')
        one[length - 1] = '\0';
    write_label(sheet, one);
}

static int widest_label(json_t *answer)
{
    size_t widest = 0;
    const char *member;
    json_t *value;
    json_object_foreach(answer, member, value)
        if (is_listed(member) && is_figure(value) && strlen(member) > widest)
            widest = strlen(member);
    return (int)widest;
}

static void show_figure(struct sheet *sheet, const char *member, json_t *value, int indent, int widest)
{
    char *text = sheet_text_of(value);
    fprintf(sheet->out, "%*s", indent, "");
    write_label(sheet, member);
    fprintf(sheet->out, "%*s  %s\n", widest - (int)strlen(member), "", text);
    free(text);
}

static void show_members(struct sheet *sheet, json_t *answer, int indent);

/* A list of objects, numbered from 1. */
static void show_list(struct sheet *sheet, const char *member, json_t *list, int indent)
{
    for (size_t i = 0; i < json_array_size(list); i++) {
        json_t *element = json_array_get(list, i);
        fprintf(sheet->out, "%*s", indent, "");
        write_label_of_one(sheet, member);
        fprintf(sheet->out, " %zu%s", i + 1, is_figure(element) ? "  " : "\n");
        if (!is_figure(element)) {
            show_members(sheet, element, indent + INDENT);
            continue;
        }
        char *text = sheet_text_of(element);
        fprintf(sheet->out, "%s\n", text);
        free(text);
    }
}

static void show_group(struct sheet *sheet, const char *member, json_t *value, int indent)
{
    if (json_is_array(value)) {
        show_list(sheet, member, value, indent);
        return;
    }
    fprintf(sheet->out, "%*s", indent, "");
    write_label(sheet, member);
    fputc('\n', sheet->out);
    show_members(sheet, value, indent + INDENT);
}

/* Figures in a column first, as they come; what holds more figures is shown where it stands, one step further in. The
 * depth is that of the answers, three at most. */
static void show_members(struct sheet *sheet, json_t *answer, int indent)
{
    int widest = widest_label(answer);
    const char *member;
    json_t *value;
    json_object_foreach(answer, member, value) {
        if (!is_listed(member))
            continue;
        if (is_figure(value))
            show_figure(sheet, member, value, indent, widest);
        else
            show_group(sheet, member, value, indent);
    }
}

void show_sentences(struct sheet *sheet, json_t *sentences)
{
    for (size_t i = 0; i < json_array_size(sentences); i++) {
        json_t *one = json_pack("{s:O}", "sentence", json_array_get(sentences, i));
        sheet_point(sheet, one, "{sentence}");
        json_decref(one);
    }
}

void show_figures(struct sheet *sheet, json_t *answer)
{
    json_t *warnings = json_object_get(answer, "warnings");
    show_members(sheet, answer, INDENT);
    if (json_array_size(warnings) > 0)
        sheet_gap(sheet);
    show_sentences(sheet, warnings);
}

/* ---- lines ------------------------------------------------------------------------------------------------------ */

static void show_each(struct sheet *sheet, json_t *list, const char *template)
{
    for (size_t i = 0; i < json_array_size(list); i++)
        sheet_say(sheet, json_array_get(list, i), template);
}

void show_cut(struct sheet *sheet, json_t *answer)
{
    show_each(sheet, json_object_get(answer, "pieces"), "Cut {cut} to finish at {finished}.");
}

void show_finished(struct sheet *sheet, json_t *answer)
{
    show_each(sheet, json_object_get(answer, "pieces"), "A piece cut {cut} finishes at {finished}.");
}

static const char *row_template(json_t *row)
{
    if (json_object_get(row, "pieces") != NULL)
        return "{name}: {pieces:piece}, {width} by {length}";
    if (json_object_get(row, "months") != NULL)
        return "{name}: {months}";
    if (json_object_get(row, "least") != NULL)
        return "{name}: {least} to {greatest}";
    return json_object_get(row, "length") != NULL ? "{name}: {width} by {length}" : "{name}: {width}";
}

void show_table(struct sheet *sheet, json_t *answer)
{
    json_t *rows = json_object_get(answer, "rows");
    for (size_t i = 0; i < json_array_size(rows); i++) {
        json_t *row = json_array_get(rows, i);
        sheet_point(sheet, row, row_template(row));
        sheet_under(sheet, row, "{source}");
        if (json_object_get(row, "note") != NULL)
            sheet_under(sheet, row, "Note: {note}.");
    }
}

/* ---- figures that need a sentence ------------------------------------------------------------------------------- */

void show_calibrate(struct sheet *sheet, json_t *answer)
{
    bool short_by = json_object_get(answer, "nearer_the_raw_edge_by") != NULL;
    sheet_say(sheet, answer, short_by ? "To meet the plan, sew {nearer_the_raw_edge_by} nearer the raw edge than now: at "
                                        "{sew_at} if the stitches were where you meant them. What the set is short by "
                                        "may be fold and thread or too wide a seam; test again."
                                      : "To meet the plan, sew at {sew_at} from the raw edge: "
                                        "{farther_from_the_raw_edge_by} farther from it than now.");
    sheet_gap(sheet);
    show_figures(sheet, answer);
}

void show_yield(struct sheet *sheet, json_t *answer)
{
    bool one_end = json_is_true(json_object_get(answer, "cut_from_one_end"));
    if (json_integer_value(json_object_get(answer, "segments")) > 0) {
        sheet_point(sheet, answer, one_end ? "Cut {cut_from_each_end} from one end."
                                           : "Cut {cut_from_each_end} from each end; {left_over} is left over, fold "
                                             "included.");
        sheet_point(sheet, answer, one_end
                                       ? "The shortest strip may be {strip_may_be_shorter_by} shorter, down to "
                                         "{shortest_strip_that_gives_as_many}; below that, a segment is lost."
                                       : "The shortest strip may be {strip_may_be_shorter_by} shorter, down to "
                                         "{shortest_strip_that_gives_as_many}; below that, two segments are lost, one "
                                         "at each end.");
    }
    if (json_integer_value(json_object_get(answer, "squared_again")) > 0)
        sheet_point(sheet, answer, "The cut edge is squared again {squared_again:time}.");
    sheet_point(sheet, answer, one_end ? "One more segment needs strips {longer_for_more_by} longer."
                                       : "Two more segments, one from each end, need strips {longer_for_more_by} "
                                         "longer.");
    show_sentences(sheet, json_object_get(answer, "warnings"));
}

static const char *bias_method(json_t *answer)
{
    if (says(answer, "way", "strips"))
        return "From a square cut {cloth_width}, {strips:strip} cut {strip_cut} wide, side by side and parallel to its "
               "diagonal, joined end to end, give {bias_length} of bias.";
    if (says(answer, "way", "square"))
        return "Cut a square {square_cut} on each side for {length_wanted} of bias cut {strip_cut} wide: it gives "
               "{bias_length}, {spare} more than wanted.";
    return "A piece cut {cloth_width} by {cloth_length} gives {bias_length} of bias cut {strip_cut} wide.";
}

void show_bias(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, bias_method(answer));
    sheet_gap(sheet);
    if (!says(answer, "way", "strips"))
        sheet_point(sheet, answer, "The way: cut the piece on the diagonal, join the halves, sew them into a tube "
                                   "offset by one strip, and cut round and round: {rounds:round}.");
    sheet_point(sheet, answer, "Seam allowance {seam_allowance}; {joins:seam} that shorten the run.");
    if (says(answer, "way", "square"))
        sheet_point(sheet, answer, "The area rule's {area_rule_would_say} would be too small.");
}
