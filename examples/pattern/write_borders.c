/* write_borders.c - borders round the top: measured first, then cut and sewn in their order.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

/* Strips that have a step each are called by their side; else both of a pair are told at once. */
static void add_strip_name(struct line *line, const struct worked *worked, size_t step, bool is_wide)
{
    const struct named *named = named_of(worked->design, worked->steps[step].node);
    if (named != NULL && named->side != 0)
        add_name(line, worked, worked->steps[step].node);
    else
        add(line, "%s, %s", border_of_step(worked, step)->name, is_wide ? "top and bottom" : "left and right");
}

static void write_strip_row(struct table *table, const struct worked *worked, size_t step, muslin_id patch)
{
    const int64_t cut = cut_of_patch(worked, patch);
    const struct muslin_node_size size = size_of(worked, patch);
    const bool is_wide = size.finished_width >= size.finished_height;
    struct line name = { NULL, 0, 0 };
    char letter[16];
    char text[WORD_ROOM];
    if (cut < 0)
        return;
    add_strip_name(&name, worked, step, is_wide);
    add_cell(table, "%s", letter_of(worked, worked->steps[step].node, letter));
    add_cell(table, "%s", name.text);
    add_cell(table, "[%d] %s", worked->piece[cut], fabric_name(worked, worked->cuts[cut].fabric));
    add_cell(table, "%s", measured(worked, is_wide ? size.finished_width : size.finished_height, text));
    add_cell(table, "%s", measured(worked, is_wide ? size.unfinished_width : size.unfinished_height, text));
    add_cell(table, "%s", measured(worked, is_wide ? size.finished_height : size.finished_width, text));
    add_cell(table, "%s", measured(worked, is_wide ? size.unfinished_height : size.unfinished_width, text));
    free(name.text);
}

static bool has_plain_strip(const struct worked *worked)
{
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (is_border_cut(worked, i))
            return true;
    return false;
}

static void write_lengths(struct document *document, const struct worked *worked)
{
    static const char *const heads[] = { "Step",         "Strip",            "Piece",     "#Length, finished",
                                         "#Length, cut", "#Width, finished", "#Width, cut" };
    if (!has_plain_strip(worked))
        return;
    struct table *table = put_table(document, "Border strips, as the sums have them", heads, 7);
    for (size_t i = first_border_step(worked); i < worked->steps_count; i++) {
        const struct feeds *feeds = &worked->feeds[i];
        for (size_t k = 0; k < feeds->count; k++)
            if (feeds->rows[k].step < 0 && is_border_strip(worked, i, feeds->rows[k].node))
                write_strip_row(table, worked, i, feeds->rows[k].node);
    }
}

void write_borders(struct document *document, const struct worked *worked)
{
    const size_t first = first_border_step(worked);
    if (worked->design->borders_used == 0 || first >= worked->steps_count)
        return;
    say(document, ITEM_HEADING, 0, NULL, "Borders");
    say(document, ITEM_SAY, 0, NULL, "Before each pair of strips press the top and measure it through the middle, not "
        "along its edges, which stretch: left and right strips get the length of the middle from top to bottom, upper "
        "and lower strips that from side to side, with those already sewn on. Cut both of a pair to that one length. Pin "
        "middles and ends first and ease the edge in between. The lengths below are what it should be.");
    write_lengths(document, worked);
    put_picture(document, PICTURE_BORDERS, worked, 0, "Borders in the order they are sewn");
    write_some_steps(document, worked, first, worked->steps_count);
}
