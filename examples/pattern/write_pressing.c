/* write_pressing.c - the pressing plan in words: each part's seams, and how well they nest.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

/* ---- joins ------------------------------------------------------------------------------------------------------ */

/* One seam: also what it is pressed towards, where that is a patch or a part with a letter. */
static void add_towards(struct line *line, const struct worked *worked, const struct muslin_pressed_seam *seam)
{
    char letter[16];
    size_t count;
    muslin_id *children = children_of(worked, seam->node, &count);
    const size_t place = seam->towards == 1 ? 0 : 1;
    struct lying part = lying_at(worked, seam->node, place, children[place]);
    int64_t cut = cut_of_patch(worked, part.node);
    if (seam->towards != 0 && cut >= 0)
        add(line, ", towards the %s [%d]", fabric_name(worked, worked->cuts[cut].fabric), worked->piece[cut]);
    else if (seam->towards != 0 && step_of(worked, part.node) >= 0)
        add(line, ", towards %s", letter_of(worked, part.node, letter));
    free(children);
}

static bool all_alike(const struct muslin_pressed_seam *seams, size_t count)
{
    for (size_t i = 1; i < count; i++)
        if (seams[i].press != seams[0].press)
            return false;
    return true;
}

void add_runs(struct line *line, const struct muslin_pressed_seam *seams, size_t count)
{
    for (size_t i = 0, next; i < count; i = next) {
        for (next = i + 1; next < count && seams[next].press == seams[i].press; next++) {
        }
        add(line, "%sseam%s %zu", i == 0 ? "" : "; ", next - i > 1 ? "s" : "", i + 1);
        if (next - i > 1)
            add(line, " to %zu", next);
        add(line, " %s", direction_name(seams[i].press));
    }
}

void write_join_pressing(struct document *document, const struct worked *worked, muslin_id join)
{
    struct line line = { NULL, 0, 0 };
    size_t count;
    const struct muslin_pressed_seam *seams = seams_of(worked, join, &count);
    if (count == 0)
        return;
    add(&line, "Press ");
    if (all_alike(seams, count))
        add(&line, "%s %s", count == 1 ? "the seam" : count == 2 ? "both seams" : "all seams",
            direction_name(seams->press));
    else
        add_runs(&line, seams, count);
    if (count == 1)
        add_towards(&line, worked, seams);
    add(&line, ".");
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* ---- mitred strips ---------------------------------------------------------------------------------------------- */

/* First the seams along the middle part, left, right, top, bottom: of the left and the top one the strip is the first
 * piece. Then the mitres. */
void write_mitred_pressing(struct document *document, const struct worked *worked, muslin_id set_in)
{
    static const char *const sides[] = { "left", "right", "upper", "lower" };
    static const char *const corners[] = { "upper left", "upper right", "lower left", "lower right" };
    struct line line = { NULL, 0, 0 };
    size_t count;
    const struct muslin_pressed_seam *seams = seams_of(worked, set_in, &count);
    if (count != 8) {
        say(document, ITEM_POINT, 0, NULL, "Press as the arrows on the drawing show.");
        return;
    }
    add(&line, "Press the seam of the ");
    for (size_t i = 0; i < 4; i++)
        add(&line, "%s%s strip towards the %s", comma(i, 4), sides[i],
            seams[i].towards == (i % 2 == 0 ? 1 : 2) ? "strip" : "middle");
    add(&line, "; ");
    if (all_alike(seams + 4, 4))
        add(&line, "all mitres %s", direction_name(seams[4].press));
    else
        for (size_t i = 0; i < 4; i++)
            add(&line, "%sthe %s mitre %s", comma(i, 4), corners[i], direction_name(seams[4 + i].press));
    add(&line, ".");
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* ---- all together ----------------------------------------------------------------------------------------------- */

static bool is_same_clash(const struct muslin_pressing_exception *a, const struct muslin_pressing_exception *b)
{
    const bool same = a->first_node == b->first_node && a->second_node == b->second_node;
    const bool swapped = a->first_node == b->second_node && a->second_node == b->first_node;
    return a->node == b->node && (same || swapped);
}

/* Whether a clash of the same parts is told with an earlier row; at the same seam alone when `at_seam` is set. */
static bool is_told(const struct worked *worked, size_t row, bool at_seam)
{
    const struct muslin_pressing_exception *rows = worked->exceptions;
    for (size_t i = 0; i < row; i++)
        if (is_same_clash(&rows[i], &rows[row]) && (!at_seam || rows[i].seam == rows[row].seam))
            return true;
    return false;
}

/* "M (row), seam 1, seam 3: 8 places, seams of L and of J". */
static void write_exception(struct document *document, const struct worked *worked, size_t first)
{
    const struct muslin_pressing_exception *row = &worked->exceptions[first];
    struct line line = { NULL, 0, 0 };
    char letter[16];
    int64_t places = 0;
    add(&line, "%s (", letter_of(worked, row->node, letter));
    add_name(&line, worked, row->node);
    add(&line, ")");
    for (size_t i = first; i < worked->exceptions_count; i++) {
        const struct muslin_pressing_exception *other = &worked->exceptions[i];
        if (!is_same_clash(row, other))
            continue;
        places += other->count;
        if (!is_told(worked, i, true))
            add(&line, ", seam %" PRId64, other->seam + 1);
    }
    add(&line, ": %" PRId64 " place%s, ", places, plural(places));
    letter_of(worked, row->first_node, letter);
    if (row->first_node == row->second_node)
        add(&line, "seams of two %s", letter);
    else
        add(&line, "a seam of %s and one of ", letter);
    if (row->first_node != row->second_node)
        add(&line, "%s", letter_of(worked, row->second_node, letter));
    put(document, ITEM_POINT, 1, NULL, &line);
}

/* How far off the top comes out if all seams are. */
static void write_errors(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    in_whole_yards(worked, worked->sewn.sewn, text);
    add(&line, "About %s of seams in all. An allowance that is %s off makes each seam twice that off: if all seams are "
        "off the same way, the top comes out off by no more than ", text, in_inches ? "1/64 in" : "0.4 mm");
    add(&line, "%s across ", at_least(worked, worked->sewn.width_worst, text));
    add(&line, "and %s down. That adds up the part with the most seams of each row, and slanting seams in full: it is "
        "less where rows are eased to each other and where units are trimmed to size.",
        at_least(worked, worked->sewn.height_worst, text));
    put(document, ITEM_SAY, 0, NULL, &line);
}

void write_pressing(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    say(document, ITEM_HEADING, 0, NULL, "Pressing, all together");
    add(&line, "Each step says which way its seams go. Seams of two parts that are sewn together meet at %" PRId64
        " places of the top. ", worked->pressed.meetings);
    if (worked->pressed.exceptions == 0)
        add(&line, "Pressed as said, they lie opposite ways at every one of them, so that they lock into each other.");
    else
        add(&line, "Pressed as said, they lock into each other at all but %" PRId64 " of them: there press one of the "
            "two seams open there, or accept the lump. They lie in:", worked->pressed.exceptions);
    put(document, ITEM_SAY, 0, NULL, &line);
    for (size_t i = 0; i < worked->exceptions_count; i++)
        if (!is_told(worked, i, false))
            write_exception(document, worked, i);
    write_errors(document, worked);
}
