/* write_pressing.c - the pressing plan in words: each part's seams, and how well they nest.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

/* ---- joins ------------------------------------------------------------------------------------------------------ */

/* One seam: also what it is pressed towards, where that is a patch or a part with a letter. */
static void add_towards(struct line *line, const struct worked *worked, const struct muslin_pressing_seam *seam)
{
    char letter[16];
    size_t count;
    muslin_id *children = children_of(worked, seam->node, &count);
    const size_t place = seam->towards == MUSLIN_TOWARDS_FIRST ? 0 : 1;
    struct lying part = lying_at(worked, seam->node, place, children[place]);
    int64_t cut = cut_of_patch(worked, part.node);
    const bool are_alike = count == 2 && lying_at(worked, seam->node, 1 - place, children[1 - place]).node == part.node;
    if (are_alike) {
        free(children);
        return; /* both are called so: the direction alone says which */
    }
    if (seam->towards != 0 && cut >= 0)
        add(line, ", towards the %s [%d]", fabric_name(worked, worked->cuts[cut].fabric), worked->piece[cut]);
    else if (seam->towards != 0 && step_of(worked, part.node) >= 0)
        add(line, ", towards %s", letter_of(worked, part.node, letter));
    free(children);
}

static bool all_alike(const struct muslin_pressing_seam *seams, size_t count)
{
    for (size_t i = 1; i < count; i++)
        if (seams[i].press != seams[0].press)
            return false;
    return true;
}

static bool takes_turns(const struct muslin_pressing_seam *seams, size_t count)
{
    enum { FEW = 4 };
    for (size_t i = 2; i < count; i++)
        if (seams[i].press != seams[i - 2].press)
            return false;
    return count > FEW && seams[0].press != seams[1].press;
}

void add_runs(struct line *line, const struct muslin_pressing_seam *seams, size_t count)
{
    if (takes_turns(seams, count)) {
        add(line, "seams 1, 3, 5 and so on %s; seams 2, 4, 6 and so on %s", direction_name(seams[0].press),
            direction_name(seams[1].press));
        return;
    }
    for (size_t i = 0, next; i < count; i = next) {
        for (next = i + 1; next < count && seams[next].press == seams[i].press; next++) {
        }
        add(line, "%sseam%s %zu", i == 0 ? "" : "; ", next - i > 1 ? "s" : "", i + 1);
        if (next - i > 1)
            add(line, " to %zu", next);
        add(line, " %s", direction_name(seams[i].press));
    }
}

/* Whether all go to the paler side because nesting wants it; in a cabin they go to the log. */
static bool goes_to_pale(const struct worked *worked, const struct muslin_pressing_seam *seams, size_t count)
{
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    must(muslin_quilt_read_join(worked->design->quilt, seams->node, &spec, NULL));
    for (size_t i = 0; i < count; i++)
        if (seams[i].preferred != MUSLIN_PREFERRED_AGAINST)
            return false;
    return spec.press == MUSLIN_SEAM_PRESS_FREE;
}

void write_join_pressing(struct document *document, const struct worked *worked, muslin_id join)
{
    struct line line = { NULL, 0, 0 };
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(worked, join, &count);
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
    if (goes_to_pale(worked, seams, count))
        add(&line, "; that is the paler side, so that they lock with what they meet");
    add(&line, ".");
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* ---- mitred strips ---------------------------------------------------------------------------------------------- */

static bool is_pressed_outwards(const struct muslin_pressing_seam *seams)
{
    for (size_t i = 0; i < 4; i++)
        if (seams[i].towards != (i % 2 == 0 ? MUSLIN_TOWARDS_FIRST : MUSLIN_TOWARDS_SECOND))
            return false;
    return true;
}

/* First the seams along the middle part, left, right, top, bottom: of the left and the top one the strip is the first
 * piece. Then the mitres. */
void write_mitred_pressing(struct document *document, const struct worked *worked, muslin_id set_in)
{
    static const char *const sides[] = { "left", "right", "upper", "lower" };
    static const char *const corners[] = { "upper left", "upper right", "lower left", "lower right" };
    struct line line = { NULL, 0, 0 };
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(worked, set_in, &count);
    if (count != 8) {
        say(document, ITEM_POINT, 0, NULL, "Press as the arrows on the drawing show.");
        return;
    }
    if (is_pressed_outwards(seams))
        add(&line, "Press all four seams towards the strips");
    else
        for (size_t i = 0; i < 4; i++)
            add(&line, "%s%s strip towards the %s", i == 0 ? "Press the seam of the " : comma(i, 4), sides[i],
                seams[i].towards == (i % 2 == 0 ? MUSLIN_TOWARDS_FIRST : MUSLIN_TOWARDS_SECOND) ? "strip" : "middle");
    add(&line, "; ");
    if (all_alike(seams + 4, 4))
        add(&line, "all %ss %s", spelt(worked, MITRE), direction_name(seams[4].press));
    else
        for (size_t i = 0; i < 4; i++)
            add(&line, "%sthe %s %s %s", comma(i, 4), corners[i], spelt(worked, MITRE),
                direction_name(seams[4 + i].press));
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

/* At each seam of the node where two parts clash, once for all copies: "seams of L and of J, at seam 1 and seam 3". */
static void add_clash(struct line *line, const struct worked *worked, size_t first)
{
    const struct muslin_pressing_exception *row = &worked->exceptions[first];
    char letter[16];
    size_t seams = 0;
    add(line, "seams of %s%s", row->first_node == row->second_node ? "two " : "",
        letter_of(worked, row->first_node, letter));
    if (row->first_node != row->second_node)
        add(line, " and of %s", letter_of(worked, row->second_node, letter));
    for (size_t i = first; i < worked->exceptions_count; i++)
        if (is_same_clash(row, &worked->exceptions[i]) && !is_told(worked, i, true))
            add(line, "%sseam %" PRId64, seams++ == 0 ? ", at " : ", ", worked->exceptions[i].seam + 1);
}

void write_clashes(struct document *document, const struct worked *worked, muslin_id node)
{
    struct line line = { NULL, 0, 0 };
    for (size_t i = 0; i < worked->exceptions_count; i++) {
        if (worked->exceptions[i].node != node || is_told(worked, i, false))
            continue;
        add(&line, "%s", line.used == 0 ? "These do not lock: " : "; ");
        add_clash(&line, worked, i);
    }
    if (line.used == 0)
        return;
    add(&line, ". Where they meet press one of the two open, or accept the lump.");
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* How far off the top comes out if all seams are. */
static void write_errors(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    in_whole_yards(worked, worked->sewn.sewn, text);
    add(&line, "About %s of seams in all; with every allowance %s off the same way, the top comes out off by no more "
        "than ", text, in_inches ? "1/64 in" : "0.4 mm");
    add(&line, "%s across ", at_least(worked, worked->sewn.width_worst, text));
    add(&line, "and %s down. ", at_least(worked, worked->sewn.height_worst, text));
    add(&line, "That counts the most seams of each row and block, which no one line need cross.");
    put(document, ITEM_SAY, 0, NULL, &line);
}

/* How the seams of parts that are sewn together lie. */
static void write_meetings(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    add(&line, "Seams of two parts that are sewn together meet at %" PRId64 " places of the top. Pressed as the steps "
        "say, they ", worked->pressed.meetings);
    if (worked->pressed.exceptions == 0)
        add(&line, "lie opposite ways at every one of them, so that they lock into each other.");
    else
        add(&line, "lock into each other at all but %" PRId64 " of them; those lie in:", worked->pressed.exceptions);
    put(document, ITEM_SAY, 0, NULL, &line);
    for (size_t i = 0; i < worked->exceptions_count; i++)
        if (!is_told(worked, i, false))
            write_exception(document, worked, i);
}

void write_pressing(struct document *document, const struct worked *worked)
{
    say(document, ITEM_HEADING, 0, NULL, "Pressing, all together");
    if (worked->pressed.meetings > 0)
        write_meetings(document, worked);
    write_errors(document, worked);
}
