/* write_borders.c - borders round the top: measured first, then cut and sewn in their order.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

/* A strip of the border: the step that sews it on, and its patch. */
static void write_strip_row(struct table *table, const struct worked *worked, size_t step)
{
    const struct feeds *feeds = &worked->feeds[step];
    char letter[16];
    char text[WORD_ROOM];
    for (size_t i = 0; i < feeds->count; i++) {
        const int64_t cut = feeds->rows[i].step < 0 ? cut_of_patch(worked, feeds->rows[i].node) : -1;
        struct line name = { NULL, 0, 0 };
        if (cut < 0)
            continue;
        const struct muslin_node_size size = size_of(worked, feeds->rows[i].node);
        const bool is_wide = size.finished_width >= size.finished_height;
        add_name(&name, worked, worked->steps[step].node);
        add_cell(table, "%s", letter_of(worked, worked->steps[step].node, letter));
        add_cell(table, "%s", name.text);
        add_cell(table, "[%d] %s", worked->piece[cut], fabric_name(worked, worked->cuts[cut].fabric));
        add_cell(table, "%s", measured(worked, is_wide ? size.finished_width : size.finished_height, text));
        add_cell(table, "%s", measured(worked, is_wide ? size.unfinished_width : size.unfinished_height, text));
        add_cell(table, "%s", measured(worked, is_wide ? size.finished_height : size.finished_width, text));
        add_cell(table, "%s", measured(worked, is_wide ? size.unfinished_height : size.unfinished_width, text));
        free(name.text);
    }
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
        const struct named *named = named_of(worked->design, worked->steps[i].node);
        if (named != NULL && named->side != 0)
            write_strip_row(table, worked, i);
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
