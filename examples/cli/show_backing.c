/* show_backing.c - a backing: the chosen layout piece by piece, the others in a line each.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <string.h>

#include "look.h"
#include "sheet.h"

/* An insert comes out longer than the panel it is let into. */
static void show_panel(struct sheet *sheet, json_t *panel, json_t *panel_length)
{
    json_t *copy = json_copy(panel);
    bool one = json_integer_value(json_object_get(panel, "count")) == 1;
    json_object_set(copy, "panel_length", panel_length);
    if (!says(panel, "piece", "insert strip"))
        sheet_under(sheet, copy, "{position}. {piece} cut {cut_width} by {cut_length}");
    else
        sheet_under(sheet, copy, one ? "{position}. {piece} cut {cut_width} by {cut_length}; trim it to {panel_length}"
                                     : "{position}. {piece} of {count} pieces joined end to end, each cut {cut_width} "
                                       "by {cut_length}; trim the joined strip to {panel_length}");
    json_decref(copy);
}

/* Words for the layouts, said after "The backing is". */
static const char *layout_in_words(const char *layout)
{
    static const char *const words[][2] = {
        { "one-width", "one panel, its length along the quilt's length" },
        { "one-width-turned", "one panel, its length along the quilt's width" },
        { "seams-along", "panels side by side, seams along the quilt's length" },
        { "seams-across", "panels one below the other, seams along the quilt's width" },
        { "centre-along", "a centre panel with two side panels, seams along the quilt's length" },
        { "centre-across", "a centre panel with a panel above and below, seams along the quilt's width" },
        { "insert-along", "one panel split lengthwise with a strip let in, seams along the quilt's length" },
        { "insert-across", "one panel split lengthwise with a strip let in, seams along the quilt's width" },
    };
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
        if (strcmp(words[i][0], layout) == 0)
            return words[i][1];
    return layout;
}

static json_t *with_words(json_t *layout)
{
    json_t *copy = json_copy(layout);
    const char *name = json_string_value(json_object_get(layout, "layout"));
    json_object_set_new(copy, "in_words", json_string(layout_in_words(name)));
    return copy;
}

static void show_other_layouts(struct sheet *sheet, json_t *backing)
{
    json_t *layouts = json_object_get(backing, "layouts");
    json_t *chosen = json_object_get(json_object_get(backing, "chosen"), "layout");
    bool none = true;
    sheet_point(sheet, backing, "Other ways to make it, where they are possible from this cloth:");
    for (size_t i = 0; i < json_array_size(layouts); i++) {
        json_t *layout = with_words(json_array_get(layouts, i));
        bool possible = json_is_true(json_object_get(layout, "possible"));
        if (possible && !json_equal(json_object_get(layout, "layout"), chosen)) {
            sheet_under(sheet, layout, "{in_words}: {bought}, {seams:seam}");
            none = false;
        }
        json_decref(layout);
    }
    if (none)
        sheet_under(sheet, backing, "none");
}

static void show_sewing_up(struct sheet *sheet, json_t *backing, bool selvage)
{
    if (!any(backing, "chosen", "seams")) {
        sheet_point(sheet, backing, "Nothing is sewn: trim it to {cut_width_needed} by {cut_length_needed}.");
        return;
    }
    sheet_point(sheet, backing, selvage ? "Sew with a seam allowance of {seam_allowance}, the selvages cut off, and "
                                          "press the seams open."
                                        : "Sew with a seam allowance of {seam_allowance} and press the seams open.");
    sheet_point(sheet, backing, "Sewn, it measures {chosen.sewn_width_unfinished} by {chosen.sewn_length_unfinished} "
                                "unfinished.");
}

void show_backing(struct sheet *sheet, json_t *backing)
{
    json_t *chosen = with_words(json_object_get(backing, "chosen"));
    json_t *panels = json_object_get(backing, "panels");
    bool selvage = any(backing, "selvage", "ticks");
    sheet_point(sheet, backing, selvage ? "The cloth is {cloth_width} wide from edge to edge; {selvage} of selvage is "
                                          "cut off each edge, which leaves {cloth_usable_width} (usable)."
                                        : "The cloth is {cloth_usable_width} wide after the selvages are cut off "
                                          "(usable).");
    sheet_point(sheet, chosen, json_is_true(json_object_get(chosen, "best"))
                                   ? "The layout that buys least: {in_words}, from {cloth_length} of cloth."
                                   : "The layout you chose: {in_words}, from {cloth_length} of cloth.");
    for (size_t i = 0; i < json_array_size(panels); i++)
        show_panel(sheet, json_array_get(panels, i), json_object_get(chosen, "panel_cut_length"));
    show_sewing_up(sheet, backing, selvage);
    show_other_layouts(sheet, backing);
    json_decref(chosen);
}

void show_backing_answer(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, "It must be at least {cut_width_needed} by {cut_length_needed} as cut, before "
                               "quilting.");
    show_backing(sheet, answer);
    sheet_point(sheet, answer, "The {chosen.bought} is enough only while your cloth is at least "
                               "{cloth_must_be_at_least} wide, selvages counted as above. If yours is narrower than planned, "
                               "plan again with its width before you cut: the panels change.");
    show_sentences(sheet, json_object_get(answer, "warnings"));
}
