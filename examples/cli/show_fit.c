/* show_fit.c - a quilt for a bed and on it, a table of settings, and a pattern resized.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

#include "look.h"
#include "memory.h"
#include "sheet.h"

static bool has(json_t *answer, const char *member)
{
    return json_object_get(answer, member) != NULL;
}

static bool is_true(json_t *answer, const char *member)
{
    return json_is_true(json_object_get(answer, member));
}

/* A length of the answer in ticks. */
static json_int_t ticks(json_t *answer, const char *member)
{
    return json_integer_value(part(answer, member, "ticks"));
}

/* ---- beds ------------------------------------------------------------------------------------------------------- */

static const char *drop_sentence(json_t *answer)
{
    if (says(answer, "drop_rule", "depth"))
        return "It hangs {side_drop} over each side: as deep as the mattress.";
    if (says(answer, "drop_rule", "over-joint"))
        return "It hangs {side_drop} over each side: deep enough to hide where mattress and base meet.";
    if (says(answer, "drop_rule", "floor"))
        return "It hangs {side_drop} over each side: down to the floor.";
    return "It hangs {side_drop} over each side.";
}

static void show_corner(struct sheet *sheet, json_t *answer)
{
    if (is_true(answer, "corner_touches_floor"))
        sheet_point(sheet, answer, "The foot corners hang {corner_hangs}: {corner_lies_on_floor} of them lie on the "
                                   "floor, where feet catch in them. Round them, or let the quilt hang less.");
    else if (has(answer, "corner_above_floor"))
        sheet_point(sheet, answer, "The foot corners hang {corner_hangs}; {corner_above_floor} to the floor is left.");
    else
        sheet_point(sheet, answer, "The foot corners hang {corner_hangs}. With --height, the bed's height from the "
                                   "floor, you are told whether they touch it.");
}

static void show_rounding(struct sheet *sheet, json_t *answer)
{
    if (!has(answer, "corner_radius"))
        return;
    sheet_point(sheet, answer, "Round both foot corners before binding: set a string at {corner_radius} from both edges "
                               "and draw a quarter circle of that radius. It takes {corner_cut_off} off the point. "
                               "Bind a curve with bias binding.");
}

void show_bed(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, drop_sentence(answer));
    sheet_point(sheet, answer, ticks(answer, "foot_drop") != 0 ? "It hangs {foot_drop} at the foot."
                                                              : "It ends where the mattress ends at the foot.");
    if (ticks(answer, "pillow_tuck") != 0)
        sheet_point(sheet, answer, "Of its length, {pillow_tuck} is tucked under and over the pillows.");
    if (ticks(answer, "head_drop") != 0)
        sheet_point(sheet, answer, "It hangs {head_drop} at the head.");
    show_corner(sheet, answer);
    show_rounding(sheet, answer);
    if (ticks(answer, "quilting_takes_up") != 0)
        sheet_point(sheet, answer, "Piece the top {top_finished_width} by {top_finished_length} finished: quilting is "
                                   "taken to draw it in by {quilting_takes_up} each way. Quilt a sample to see.");
    else
        sheet_point(sheet, answer, "Quilting draws a bed quilt in, by 1 to 3 in or more: with --quilting, the top is "
                                   "made larger by that.");
    sheet_point(sheet, answer, "Mattresses of one name differ by an inch or more: measure this one, with its covers on.");
    show_sentences(sheet, json_object_get(answer, "warnings"));
}

static const char *edges_sentence(json_t *answer)
{
    return is_true(answer, "reaches_edges")
               ? "It hangs {side_drop} over each side and {foot_drop} at the foot."
               : "It does not cover the mattress: what it has over is {side_drop} on each side and {foot_drop} at the "
                 "foot, below zero where it falls short.";
}

static const char *depth_sentence(json_t *answer)
{
    bool narrow = ticks(answer, "short_in_width") != 0;
    bool low = ticks(answer, "short_in_length") != 0;
    if (!is_true(answer, "depth_known"))
        return "With --depth, you are told whether it hides the mattress.";
    if (narrow && low)
        return "To hide the mattress it would have to be {short_in_width} wider and {short_in_length} longer.";
    if (narrow)
        return "To hide the mattress it would have to be {short_in_width} wider.";
    return low ? "To hide the mattress it would have to be {short_in_length} longer."
               : "It hides the mattress on both sides and at the foot.";
}

void show_cover(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, edges_sentence(answer));
    sheet_point(sheet, answer, depth_sentence(answer));
    if (is_true(answer, "reaches_edges"))
        show_corner(sheet, answer);
    show_sentences(sheet, json_object_get(answer, "warnings"));
}

/* ---- a table of settings ---------------------------------------------------------------------------------------- */

enum { COLUMNS = 9 };

/* A length, or a dash for none. The caller frees it. */
static char *length_or_dash(json_t *row, const char *member)
{
    return ticks(row, member) == 0 ? sheet_sentence(row, "-") : sheet_text_of(json_object_get(row, member));
}

static void fill_line(char **cells, json_t *row, size_t number)
{
    bool alternates = json_integer_value(json_object_get(row, "alternate_blocks")) > 0;
    char place[24];
    snprintf(place, sizeof place, "%zu", number);
    cells[0] = sheet_sentence(row, place);
    cells[1] = sheet_text_of(json_object_get(row, "setting"));
    cells[2] = sheet_sentence(row, "{columns} x {rows}");
    cells[3] = length_or_dash(row, "finished_block");
    cells[4] = length_or_dash(row, "finished_sash");
    cells[5] = length_or_dash(row, "finished_border");
    cells[6] = length_or_dash(row, "finished_width");
    cells[7] = length_or_dash(row, "finished_length");
    cells[8] = sheet_sentence(row, alternates ? "{blocks} + {alternate_blocks}" : "{blocks}");
}

static void write_line(FILE *out, char *const *cells, const int *widths)
{
    for (int i = 0; i < COLUMNS - 1; i++)
        fprintf(out, "  %-*s", widths[i], cells[i]);
    fprintf(out, "  %s\n", cells[COLUMNS - 1]);
}

/* Every column as wide as its widest cell. */
static void show_settings(struct sheet *sheet, json_t *rows)
{
    static const char *const titles[COLUMNS] = { "", "setting", "blocks", "block", "sash", "border", "width",
                                                 "length", "in all" };
    size_t count = json_array_size(rows);
    char **cells = need_memory((count + 1) * COLUMNS * sizeof *cells);
    int widths[COLUMNS] = { 0 };
    for (int i = 0; i < COLUMNS; i++)
        cells[i] = sheet_sentence(NULL, titles[i]);
    for (size_t row = 0; row < count; row++)
        fill_line(cells + (row + 1) * COLUMNS, json_array_get(rows, row), row + 1);
    for (size_t i = 0; i < (count + 1) * COLUMNS; i++)
        if ((int)strlen(cells[i]) > widths[i % COLUMNS])
            widths[i % COLUMNS] = (int)strlen(cells[i]);
    for (size_t row = 0; row <= count; row++)
        write_line(sheet->out, cells + row * COLUMNS, widths);
    for (size_t i = 0; i < (count + 1) * COLUMNS; i++)
        free(cells[i]);
    free(cells);
}

static const char *kinds_sentence(json_t *rows, const char *setting)
{
    for (size_t i = 0; i < json_array_size(rows); i++)
        if (says(json_array_get(rows, i), "setting", setting))
            return strcmp(setting, "on-point") == 0
                       ? "On point, blocks are counted along the edges, and those behind the + are the alternate blocks "
                         "between them; side and corner triangles come on top. Widths and lengths are to the "
                         "nearest mark that can be written."
                       : "Framed settings have a sash round the outside too.";
    return NULL;
}

static void explain_kinds(struct sheet *sheet, json_t *rows)
{
    static const char *const kinds[] = { "framed", "on-point" };
    for (size_t i = 0; i < 2; i++) {
        const char *sentence = kinds_sentence(rows, kinds[i]);
        if (sentence != NULL)
            sheet_point(sheet, NULL, sentence);
    }
}

static const char *order_sentence(json_t *answer)
{
    if (says(answer, "ranked_by", "fewest-blocks"))
        return "fewest blocks first";
    return says(answer, "ranked_by", "largest-block") ? "largest block first" : "nearest first";
}

static void show_nearest(struct sheet *sheet, json_t *answer)
{
    json_t *alone = json_pack("[O]", json_object_get(answer, "nearest"));
    sheet_say(sheet, answer, "No setting tried comes out within {within} of {wanted_width} by {wanted_length}. The "
                             "nearest one is {nearest.wider_than_wanted_by} wider and "
                             "{nearest.longer_than_wanted_by} longer than that, finished (below zero: narrower, "
                             "shorter):");
    sheet_gap(sheet);
    show_settings(sheet, alone);
    sheet_gap(sheet);
    sheet_point(sheet, answer, "Allow more with --within, other blocks with --block-least and --block-most, or borders "
                               "with --border-most.");
    explain_kinds(sheet, alone);
    json_decref(alone);
}

void show_fit(struct sheet *sheet, json_t *answer)
{
    json_t *rows = json_object_get(answer, "settings");
    if (json_array_size(rows) == 0) {
        show_nearest(sheet, answer);
        return;
    }
    char order[200];
    snprintf(order, sizeof order, "{settings_found:setting} within {within} of {wanted_width} by {wanted_length}, %s. "
                                  "All sizes are finished sizes.", order_sentence(answer));
    sheet_title(sheet, answer, order);
    show_settings(sheet, rows);
    sheet_gap(sheet);
    if (json_integer_value(json_object_get(answer, "settings_found")) > (json_int_t)json_array_size(rows))
        sheet_point(sheet, answer, "These are the first of {settings_found}; --list 0 lists all.");
    explain_kinds(sheet, rows);
    sheet_point(sheet, answer, "Borders are the width of all borders on one side. Sew a test block before you trust a "
                               "finished size: what each block is off, every column and row repeats.");
}

/* ---- a pattern resized ------------------------------------------------------------------------------------------ */

static const char *size_sentence(json_t *size)
{
    if (is_true(size, "on_the_marks"))
        return "{finished} finished becomes {new_finished} finished: cut {new_cut}.";
    if (ticks(size, "cut_on_mark_below") == 0)
        return "{finished} finished becomes {new_finished} finished: the cut, {new_cut}, lies off the marks; the first "
               "mark that shows anything is {cut_on_mark_above}.";
    return "{finished} finished becomes {new_finished} finished: the cut, {new_cut}, lies off the marks, between "
           "{cut_on_mark_below} and {cut_on_mark_above}; the nearer is {cut_on_nearest_mark}.";
}

static const char *unit_sentence(json_t *answer)
{
    bool below = has(answer, "unit_on_marks_below");
    bool above = has(answer, "unit_on_marks_above");
    if (below && above)
        return "All finished sizes are multiples of {unit_of_all_sizes}. Every cut lies on the marks if that becomes "
               "{unit_on_marks_below} or {unit_on_marks_above}; the nearer of the two is --times "
               "{nearest_scale_on_marks.times} --over {nearest_scale_on_marks.over}.";
    if (!below && !above)
        return "All finished sizes are multiples of {unit_of_all_sizes}, and no scale puts every cut on these marks: use "
               "finer marks, or another seam allowance.";
    return above ? "All finished sizes are multiples of {unit_of_all_sizes}. Every cut lies on the marks if that becomes "
                   "{unit_on_marks_above}: --times {nearest_scale_on_marks.times} --over "
                   "{nearest_scale_on_marks.over}."
                 : "All finished sizes are multiples of {unit_of_all_sizes}. Every cut lies on the marks if that becomes "
                   "{unit_on_marks_below}: --times {nearest_scale_on_marks.times} --over "
                   "{nearest_scale_on_marks.over}.";
}

void show_rescale(struct sheet *sheet, json_t *answer)
{
    json_t *sizes = json_object_get(answer, "sizes");
    bool off = json_integer_value(json_object_get(answer, "sizes_off_the_marks")) > 0;
    for (size_t i = 0; i < json_array_size(sizes); i++)
        sheet_point(sheet, json_array_get(sizes, i), size_sentence(json_array_get(sizes, i)));
    sheet_gap(sheet);
    sheet_say(sheet, answer, off ? unit_sentence(answer) : "Every cut lies on marks {marks} apart.");
    if (off)
        sheet_say(sheet, answer, "A single piece that is rounded to a mark no longer meets its neighbours: change the "
                                 "scale for all of them, and sew a test block.");
}
