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
    sheet_point(sheet, answer, "Round both foot corners before binding: set a string at {corner_radius} from both "
                               "raw edges of the trimmed, unbound quilt and draw a quarter circle of that radius. It "
                               "takes {corner_cut_off} off the point. Bind a curve with bias binding.");
}

void show_bed(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, drop_sentence(answer));
    sheet_point(sheet, answer, ticks(answer, "foot_drop") != 0 ? "It hangs {foot_drop} at the foot."
                                                              : "It ends where the mattress ends at the foot.");
    sheet_point(sheet, answer, ticks(answer, "pillow_tuck") != 0
                                   ? "Of its length, {pillow_tuck} is tucked under and over the pillows."
                                   : "Nothing is allowed for a pillow tuck (--tuck).");
    if (ticks(answer, "head_drop") != 0)
        sheet_point(sheet, answer, "It hangs {head_drop} at the head.");
    show_corner(sheet, answer);
    show_rounding(sheet, answer);
    if (ticks(answer, "quilting_takes_up") != 0)
        sheet_point(sheet, answer, "Piece the top {top_finished_width} by {top_finished_length} finished, "
                                   "{top_unfinished_width} by {top_unfinished_length} unfinished (seam allowance "
                                   "{seam_allowance}): quilting is taken to draw it in by {quilting_takes_up} each "
                                   "way. Quilt a sample to see; what the wash takes is for muslin shrinkage.");
    else
        sheet_point(sheet, answer, "Make the top larger than this: quilting draws a bed quilt in, by 1 to 3 in or more "
                                   "(--quilting adds that), and washing shrinks it (see muslin shrinkage). A top of "
                                   "{top_unfinished_width} by {top_unfinished_length} unfinished (seam allowance "
                                   "{seam_allowance}) is too small unless nothing is taken up: add to it.");
    sheet_point(sheet, answer, "Mattresses of one name differ by an inch or more: measure this one, with its covers "
                               "on.");
    show_sentences(sheet, json_object_get(answer, "warnings"));
}

static const char *edges_sentence(json_t *answer)
{
    bool narrow = has(answer, "missing_on_each_side");
    if (is_true(answer, "reaches_edges"))
        return "It hangs {side_drop} over each side and {foot_drop} at the foot.";
    if (narrow && has(answer, "missing_at_the_foot"))
        return "It does not cover the mattress: {missing_on_each_side} is missing on each side and "
               "{missing_at_the_foot} at the foot.";
    return narrow ? "It does not cover the mattress: {missing_on_each_side} is missing on each side; it hangs "
                    "{foot_drop} at the foot."
                  : "It does not cover the mattress: {missing_at_the_foot} is missing at the foot; it hangs "
                    "{side_drop} over each side.";
}

/* How far below the mattress it hangs, where it hides it. */
static const char *margin_sentence(json_t *answer)
{
    bool sides = ticks(answer, "beyond_the_depth_at_the_sides") > 0;
    bool foot = ticks(answer, "beyond_the_depth_at_the_foot") > 0;
    if (sides && foot)
        return "It hides the mattress: it hangs {beyond_the_depth_at_the_sides} below its lower edge on both sides and "
               "{beyond_the_depth_at_the_foot} at the foot.";
    if (sides)
        return "It hangs {beyond_the_depth_at_the_sides} below the mattress's lower edge on both sides; at the foot it "
               "just reaches it, with no margin.";
    return foot ? "It hangs {beyond_the_depth_at_the_foot} below the mattress's lower edge at the foot; on both sides "
                  "it just reaches it, with no margin."
                : "It just reaches the lower edge of the mattress on both sides and at the foot: there is no margin.";
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
    return low ? "To hide the mattress it would have to be {short_in_length} longer." : margin_sentence(answer);
}

void show_cover(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, edges_sentence(answer));
    sheet_point(sheet, answer, depth_sentence(answer));
    sheet_point(sheet, answer, ticks(answer, "pillow_tuck") != 0 ? "Of its length, {pillow_tuck} is tucked under and "
                                                                   "over the pillows."
                                                                 : "Nothing is allowed for a pillow tuck (--tuck).");
    if (is_true(answer, "reaches_edges"))
        show_corner(sheet, answer);
    show_sentences(sheet, json_object_get(answer, "warnings"));
}

/* ---- how many fit ----------------------------------------------------------------------------------------------- */

/* Half of 1/64 in, in ticks: what is off by less is not seen. */
enum { UNSEEN = 64 };

/* How a side comes out against the size wanted: one of three sentences. */
static const char *compared(json_t *answer, const char *off, const char *more, const char *less, const char *equal)
{
    if (ticks(answer, off) >= UNSEEN)
        return more;
    return ticks(answer, off) <= -UNSEEN ? less : equal;
}

void show_across(struct sheet *sheet, json_t *answer)
{
    bool sashes = ticks(answer, "finished_sash") != 0;
    sheet_point(sheet, answer, compared(answer, "wider_than_wanted_by", "Wanted were {wanted_width}: it is {off_by} "
                                                                        "wider.",
                                        "Wanted were {wanted_width}: it is {off_by} narrower.",
                                        "That is as wide as wanted."));
    if (sashes)
        sheet_point(sheet, answer, is_true(answer, "sash_at_both_ends")
                                       ? "Sashes {finished_sash} wide finished lie between the blocks and at both ends."
                                       : "Sashes {finished_sash} wide finished lie between the blocks.");
    sheet_point(sheet, answer, ticks(answer, "finished_border_on_each_side") != 0
                                   ? "The border is {finished_border_on_each_side} wide finished on each side."
                                   : "There is no border.");
    sheet_point(sheet, answer, "Finished is from seam line to seam line of the top, before quilting and washing, which "
                               "draw it in.");
}

static void show_halves(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, "For the ends of the rows cut {half_triangles_of_each_hand} left and "
                               "{half_triangles_of_each_hand} right half triangles, mirror images of each other, one "
                               "of each a row: from the same strips, square to the strip on one side, at 60 degrees on "
                               "the other, {cut_base_of_a_half_triangle} wide at the wider edge. That is half a whole "
                               "triangle and a seam allowance for the straight side, up to the next mark; what is too "
                               "much is trimmed when the sides are straightened.");
}

void show_triangle_rows(struct sheet *sheet, json_t *answer)
{
    char off[200];
    snprintf(off, sizeof off, "That is %s and %s.",
             compared(answer, "wider_than_wanted_by", "{width_off_by} wider than wanted",
                      "{width_off_by} narrower than wanted", "as wide as wanted"),
             compared(answer, "longer_than_wanted_by", "{length_off_by} longer", "{length_off_by} shorter",
                      "as long as wanted"));
    sheet_point(sheet, answer, off);
    sheet_point(sheet, answer, "Finished, a triangle is {finished_height_of_a_row} high, which is the depth of a row, "
                               "and about {finished_side_of_a_triangle} along each side.");
    sheet_point(sheet, answer, ticks(answer, "take_up") == 0
                                   ? "Cut strips {strip_cut_for_sharp_tips} wide for triangles with sharp tips (the "
                                     "finished height and three seam allowances of {seam_allowance}), or "
                                     "{strip_cut_for_blunt_tips} wide where the ruler blunts the upper tip (the "
                                     "height and two)."
                                   : "Cut strips {strip_cut_for_sharp_tips} wide for triangles with sharp tips, or "
                                     "{strip_cut_for_blunt_tips} wide where the ruler blunts the upper tip; seam "
                                     "allowance {seam_allowance}, take-up {take_up}.");
    sheet_point(sheet, answer, "Cut {whole_triangles:whole triangle} from them at 60 degrees, point up and point down "
                               "in turn. A cut one measures about {cut_base_of_a_triangle} along the strip, its two "
                               "lower tips left sharp.");
    show_halves(sheet, answer);
    sheet_point(sheet, answer, "From cloth {usable_width} wide (usable), with sharp tips: "
                               "{strips_for_whole_triangles:strip} for the whole triangles, "
                               "{whole_triangles_from_each_strip} from a strip, and at most "
                               "{strips_for_half_triangles:strip} for the halves, at least "
                               "{half_triangles_from_each_strip} from a strip: {cloth_for_the_strips} of cloth.");
    show_shop_length(sheet, answer);
    sheet_point(sheet, answer, "Slanted edges lie on the bias: handle them little. Sew one row and measure it before "
                               "you cut the rest.");
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
                       ? "On point, blocks are counted along the edges, and those behind the + are the alternate "
                         "blocks between them; side and corner triangles come on top. Widths and lengths with \"about\""
                         " are to the nearest 1/16 in."
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

/* One range of sizes: all of it, the one size there is, or nothing. */
static const char *range_sentence(json_t *range, const char *all, const char *one, const char *none)
{
    if (ticks(range, "most") == 0)
        return none;
    return ticks(range, "least") == ticks(range, "most") ? one : all;
}

static void show_tried(struct sheet *sheet, json_t *tried)
{
    json_t *sash = json_object_get(tried, "finished_sash");
    char sentence[600];
    snprintf(sentence, sizeof sentence,
             "Tried: %s, {columns_least} to {columns_most} of them across and {rows_least} to {rows_most} down; %s%s.",
             range_sentence(json_object_get(tried, "finished_block"),
                            "blocks from {finished_block.least} to {finished_block.most}, every {finished_block.step}",
                            "blocks of {finished_block.least}", ""),
             sash == NULL ? "" : range_sentence(sash, "sashes from {finished_sash.least} to {finished_sash.most}, "
                                                      "every {finished_sash.step}; ",
                                                "sashes of {finished_sash.least}; ", ""),
             range_sentence(json_object_get(tried, "finished_border"),
                            "borders from {finished_border.least} to {finished_border.most}, every "
                            "{finished_border.step}", "a border of {finished_border.least}", "no border"));
    sheet_point(sheet, tried, sentence);
}

/* The settings that were asked for and have no line in the table. */
static void show_missing(struct sheet *sheet, json_t *answer)
{
    json_t *missing = json_object_get(answer, "settings_without_a_fit");
    for (size_t i = 0; i < json_array_size(missing); i++) {
        json_t *one = json_array_get(missing, i);
        bool border = ticks(json_object_get(one, "nearest"), "finished_border") != 0;
        json_object_set(one, "within", json_object_get(answer, "within"));
        if (!has(one, "nearest"))
            sheet_point(sheet, one, "No {setting} setting comes within {within} of the size.");
        else
            sheet_point(sheet, one, border ? "No {setting} setting comes within {within} of the size; the nearest has "
                                             "{nearest.columns} x {nearest.rows} blocks of {nearest.finished_block} "
                                             "and a border of {nearest.finished_border}: {nearest.finished_width} by "
                                             "{nearest.finished_length}."
                                           : "No {setting} setting comes within {within} of the size; the nearest has "
                                             "{nearest.columns} x {nearest.rows} blocks of {nearest.finished_block}: "
                                             "{nearest.finished_width} by {nearest.finished_length}.");
        json_object_del(one, "within");
    }
    if (json_array_size(missing) != 0)
        sheet_point(sheet, answer, "Nearest is where the deviations of width and length together are least.");
}

static void show_nearest(struct sheet *sheet, json_t *answer)
{
    json_t *alone = json_pack("[O]", json_object_get(answer, "nearest"));
    json_t *nearest = json_object_get(answer, "nearest");
    char sentence[400];
    snprintf(sentence, sizeof sentence,
             "No {settings_asked} setting comes out within {within} of {wanted_width} by {wanted_length}. The nearest "
             "one is %s and %s, finished:",
             compared(nearest, "wider_than_wanted_by", "{nearest.width_off_by} wider than wanted",
                      "{nearest.width_off_by} narrower than wanted", "as wide as wanted"),
             compared(nearest, "longer_than_wanted_by", "{nearest.length_off_by} longer",
                      "{nearest.length_off_by} shorter", "as long as wanted"));
    sheet_say(sheet, answer, sentence);
    sheet_gap(sheet);
    show_settings(sheet, alone);
    sheet_gap(sheet);
    show_tried(sheet, json_object_get(answer, "tried"));
    sheet_point(sheet, answer, "Nearest is where the deviations of width and length together are least.");
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
    show_missing(sheet, answer);
    explain_kinds(sheet, rows);
    show_tried(sheet, json_object_get(answer, "tried"));
    sheet_point(sheet, answer, "Borders are the width of all borders on one side. Finished is from seam line to seam "
                               "line of the top, before quilting and washing. Sew a test block before you trust a "
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
        return "All finished sizes are multiples of {unit_of_all_sizes}. If {unit_of_all_sizes} finished becomes "
               "{unit_on_marks_below} or {unit_on_marks_above}, every cut lies on the marks; the nearer of the two is "
               "--times {nearest_scale_on_marks.times} --over {nearest_scale_on_marks.over}.";
    if (!below && !above)
        return "All finished sizes are multiples of {unit_of_all_sizes}, and no scale puts every cut on these marks: "
               "use finer marks, or another seam allowance.";
    return above ? "All finished sizes are multiples of {unit_of_all_sizes}. If {unit_of_all_sizes} finished becomes "
                   "{unit_on_marks_above}, every cut lies on the marks: --times {nearest_scale_on_marks.times} --over "
                   "{nearest_scale_on_marks.over}."
                 : "All finished sizes are multiples of {unit_of_all_sizes}. If {unit_of_all_sizes} finished becomes "
                   "{unit_on_marks_below}, every cut lies on the marks: --times {nearest_scale_on_marks.times} --over "
                   "{nearest_scale_on_marks.over}.";
}

void show_rescale(struct sheet *sheet, json_t *answer)
{
    json_t *sizes = json_object_get(answer, "sizes");
    bool off = json_integer_value(json_object_get(answer, "sizes_off_the_marks")) > 0;
    if (off) {
        sheet_say(sheet, answer, "Do not cut these to the nearest mark: pieces that add up before do not add up when "
                                 "each is rounded by itself, so they no longer meet their neighbours. Change the scale "
                                 "for all of them, and sew a test block.");
        sheet_gap(sheet);
    }
    for (size_t i = 0; i < json_array_size(sizes); i++)
        sheet_point(sheet, json_array_get(sizes, i), size_sentence(json_array_get(sizes, i)));
    sheet_gap(sheet);
    sheet_say(sheet, answer, off ? unit_sentence(answer) : "Every cut lies on marks {marks} apart.");
}
