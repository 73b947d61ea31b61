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
    char letter[16];
    if (named != NULL && named->side != 0)
        add_name(line, worked, worked->steps[step].node);
    else
        add(line, "%s, %s", border_of_step(worked, step)->name, is_wide ? "top and bottom" : "left and right");
    add(line, " (%s)", letter_of(worked, worked->steps[step].node, letter));
}

/* The strip of a step that is cut so; 0: it takes none. */
static muslin_id strip_of_step(const struct worked *worked, size_t step, size_t cut)
{
    const struct feeds *feeds = &worked->feeds[step];
    for (size_t i = 0; i < feeds->count; i++)
        if (feeds->rows[i].step < 0 && is_border_strip(worked, step, feeds->rows[i].node) &&
            is_cut_for(worked, cut, feeds->rows[i].node))
            return feeds->rows[i].node;
    return 0;
}

/* A row for each piece: both of a pair together. */
static void write_strip_row(struct table *table, const struct worked *worked, size_t cut)
{
    struct muslin_node_size size = { .size = 0 };
    struct line uses = { NULL, 0, 0 };
    char text[WORD_ROOM];
    for (size_t i = first_border_step(worked); i < worked->steps_count; i++) {
        const muslin_id strip = strip_of_step(worked, i, cut);
        if (strip == 0)
            continue;
        size = size_of(worked, strip);
        add(&uses, "%s", uses.used > 0 ? "; " : "");
        add_strip_name(&uses, worked, i, size.finished_width > size.finished_height);
    }
    const bool is_wide = size.finished_width > size.finished_height;
    add_cell(table, "[%d] %s", worked->piece[cut], fabric_name(worked, worked->cuts[cut].fabric));
    add_cell(table, "%s", uses.text);
    add_cell(table, "%s", measured_by(worked, is_wide ? size.finished_width : size.finished_height,
                                      is_wide ? size.finished_height : size.finished_width, text));
    add_cell(table, "%s", measured_by(worked, is_wide ? size.unfinished_width : size.unfinished_height,
                                      is_wide ? size.unfinished_height : size.unfinished_width, text));
    free(uses.text);
}

/* A mitred strip lies along the outer edge from corner to corner. */
static void write_mitred_row(struct table *table, const struct worked *worked, size_t cut,
                             const struct border_asked *border)
{
    static const char *const where[] = { "all four sides", "left and right", "top and bottom" };
    const struct muslin_node_size size = size_of(worked, border->outside);
    const enum mitred_sides sides = mitred_sides(worked, cut, border->outside);
    char text[WORD_ROOM];
    char letter[16];
    add_cell(table, "[%d] %s", worked->piece[cut], fabric_name(worked, worked->cuts[cut].fabric));
    add_cell(table, "%s, %s (%s)", border->name, where[sides], letter_of(worked, border->outside, letter));
    add_cell(table, "%s", measured_by(worked, sides == MITRED_ACROSS ? size.finished_width : size.finished_height,
                                      border->width, text));
    add_cell(table, "%s", measured_by(worked, cut_length(worked, cut), worked->cuts[cut].cut_height, text));
}

static void write_lengths(struct document *document, const struct worked *worked)
{
    static const char *const heads[] = { "Piece", "For", "Finished, length x width", "Cut, length x width" };
    struct table *table = NULL;
    int told = 0;
    for (size_t i = 0; i < worked->cuts_count; i++) {
        const size_t cut = worked->order[i];
        const struct border_asked *mitred = mitred_border_of(worked, cut);
        if ((mitred == NULL && !is_border_cut(worked, cut)) || worked->piece[cut] == told)
            continue;
        told = worked->piece[cut];
        if (table == NULL)
            table = put_table(document, "Border strips, as the sums have them", heads, 4);
        if (mitred != NULL)
            write_mitred_row(table, worked, cut, mitred);
        else
            write_strip_row(table, worked, cut);
    }
}

static bool has_corners(const struct worked *worked, enum border_corners corners)
{
    for (size_t i = 0; i < worked->design->borders_used; i++)
        if (worked->design->borders[i].corners == (int32_t)corners)
            return true;
    return false;
}

static bool has_plain_strip(const struct worked *worked)
{
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (is_border_cut(worked, i))
            return true;
    return false;
}

static void write_measuring(struct document *document, const struct worked *worked)
{
    if (has_plain_strip(worked))
        say(document, ITEM_SAY, 0, NULL, "Before each pair of strips press the top and measure it through the middle, "
            "not along its edges, which stretch: from top to bottom for the strips at left and right, from side to "
            "side for those at top and bottom, each time with the strips that are already sewn on. Cut both of a pair "
            "to that one length. Pin middles and ends first and ease the edge in between. Lengths told here are what "
            "it should be.");
    if (has_corners(worked, CORNERS_STONES))
        say(document, ITEM_POINT, 0, NULL, "Of a border with %ss measure both ways before any of its strips is sewn "
            "on: the squares make up the corners.", word(worked, WORD_CORNERSTONE));
    if (has_corners(worked, CORNERS_PIECED))
        say(document, ITEM_POINT, 0, NULL, "A pieced border has its length: where it does not fit, let out or take in "
            "a little of several of its seams.");
    if (has_corners(worked, CORNERS_MITRED))
        say(document, ITEM_POINT, 0, NULL, "Strips of a %s border are cut long and trimmed when the corners are sewn. "
            "Measure the top through the middle both ways, mark that length on each strip, as much of it on either "
            "side of the strip's middle, and pin mark on corner and middle on middle: what is over stands out alike at "
            "both ends.", spelt(worked, MITRED));
}

void write_borders(struct document *document, const struct worked *worked)
{
    const size_t first = first_border_step(worked);
    if (worked->design->borders_used == 0 || first >= worked->steps_count)
        return;
    say(document, ITEM_HEADING, 0, NULL, "Borders");
    write_measuring(document, worked);
    write_lengths(document, worked);
    put_picture(document, PICTURE_BORDERS, worked, 0, "Borders in the order they are sewn");
    write_some_steps(document, worked, first, worked->steps_count);
}
