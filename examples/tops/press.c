/* press.c - the pressing plan in words: each part's seams, and how well they nest.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"

const struct muslin_pressed_seam *seams_of(const struct sheet *sheet, muslin_id node, size_t *count)
{
    const struct muslin_pressed_seam *first = NULL;
    *count = 0;
    for (size_t i = 0; i < sheet->seams_count; i++) {
        if (sheet->seams[i].node != node)
            continue;
        first = first == NULL ? &sheet->seams[i] : first;
        ++*count;
    }
    return first;
}

const char *direction(int32_t press)
{
    static const char *const words[] = { "", "to the left", "to the right", "upwards", "downwards", "open" };
    return words[press];
}

/* ---- joins ------------------------------------------------------------------------------------------------------ */

/* One seam: also what it is pressed towards, where that is a patch or a part with a letter. */
static void add_towards(struct line *line, const struct sheet *sheet, const struct muslin_pressed_seam *seam)
{
    char text[16];
    size_t count;
    muslin_id *children = children_of(sheet, seam->node, &count);
    struct lying part = lying_at(sheet, seam->node, seam->towards == 1 ? 0 : 1, children[seam->towards == 1 ? 0 : 1]);
    int64_t cut = cut_of_patch(sheet, part.node);
    if (seam->towards != 0 && cut >= 0)
        add(line, ", towards the %s [%d]", fabric_name(sheet, sheet->cuts[cut].fabric), sheet->piece[cut]);
    else if (seam->towards != 0 && step_of(sheet, part.node) >= 0)
        add(line, ", towards %s", letter(sheet, part.node, text));
    free(children);
}

static int all_alike(const struct muslin_pressed_seam *seams, size_t count)
{
    for (size_t i = 1; i < count; i++)
        if (seams[i].press != seams[0].press)
            return 0;
    return 1;
}

void add_runs(struct line *line, const struct muslin_pressed_seam *seams, size_t count)
{
    for (size_t i = 0, next; i < count; i = next) {
        for (next = i + 1; next < count && seams[next].press == seams[i].press; next++) {
        }
        add(line, "%sseam%s %zu", i == 0 ? "" : "; ", next - i > 1 ? "s" : "", i + 1);
        if (next - i > 1)
            add(line, " to %zu", next);
        add(line, " %s", direction(seams[i].press));
    }
}

void print_join_pressing(const struct sheet *sheet, muslin_id join)
{
    struct line line = { .used = 0 };
    size_t count;
    const struct muslin_pressed_seam *seams = seams_of(sheet, join, &count);
    if (count == 0)
        return;
    add(&line, "Press ");
    if (all_alike(seams, count))
        add(&line, "%s %s", count == 1 ? "the seam" : count == 2 ? "both seams" : "all seams", direction(seams->press));
    else
        add_runs(&line, seams, count);
    if (count == 1)
        add_towards(&line, sheet, seams);
    add(&line, ".");
    print_line(&line, 9, 2);
}

/* ---- mitred strips ---------------------------------------------------------------------------------------------- */

/* First the seams along the middle part, left, right, top, bottom: of the left and the top one the strip is the first
 * piece. Then the mitres. */
void print_mitred_pressing(const struct sheet *sheet, muslin_id set_in)
{
    static const char *const sides[] = { "left", "right", "upper", "lower" };
    static const char *const corners[] = { "upper left", "upper right", "lower left", "lower right" };
    struct line line = { .used = 0 };
    size_t count;
    const struct muslin_pressed_seam *seams = seams_of(sheet, set_in, &count);
    if (count != 8)
        return;
    add(&line, "Press the seam of the ");
    for (size_t i = 0; i < 4; i++)
        add(&line, "%s%s strip towards the %s", comma(i, 4), sides[i],
            seams[i].towards == (i % 2 == 0 ? 1 : 2) ? "strip" : "middle");
    add(&line, "; ");
    if (all_alike(seams + 4, 4))
        add(&line, "all mitres %s", direction(seams[4].press));
    else
        for (size_t i = 0; i < 4; i++)
            add(&line, "%sthe %s mitre %s", comma(i, 4), corners[i], direction(seams[4 + i].press));
    add(&line, ".");
    print_line(&line, 9, 2);
}

/* ---- all together ----------------------------------------------------------------------------------------------- */

static int is_same_clash(const struct muslin_pressing_exception *a, const struct muslin_pressing_exception *b)
{
    int same = a->first_node == b->first_node && a->second_node == b->second_node;
    int swapped = a->first_node == b->second_node && a->second_node == b->first_node;
    return a->node == b->node && (same || swapped);
}

/* Whether a clash of the same parts is told with an earlier row; at the same seam alone when `at_seam` is set. */
static int is_told(const struct sheet *sheet, size_t row, int at_seam)
{
    const struct muslin_pressing_exception *rows = sheet->exceptions;
    for (size_t i = 0; i < row; i++)
        if (is_same_clash(&rows[i], &rows[row]) && (!at_seam || rows[i].seam == rows[row].seam))
            return 1;
    return 0;
}

/* "- M (row), seam 1, seam 3: 8 places, seams of L and of J". */
static void print_exception(const struct sheet *sheet, size_t first)
{
    const struct muslin_pressing_exception *row = &sheet->exceptions[first];
    struct line line = { .used = 0 };
    char text[16];
    int64_t places = 0;
    add(&line, "- %s (", letter(sheet, row->node, text));
    add_name(&line, sheet, row->node);
    add(&line, ")");
    for (size_t i = first; i < sheet->exceptions_count; i++) {
        const struct muslin_pressing_exception *other = &sheet->exceptions[i];
        if (!is_same_clash(row, other))
            continue;
        places += other->count;
        if (!is_told(sheet, i, 1))
            add(&line, ", seam %" PRId64, other->seam + 1);
    }
    add(&line, ": %" PRId64 " place%s, ", places, plural(places));
    if (row->first_node == row->second_node)
        add(&line, "seams of two %s", letter(sheet, row->first_node, text));
    else {
        add(&line, "a seam of %s", letter(sheet, row->first_node, text));
        add(&line, " and one of %s", letter(sheet, row->second_node, text));
    }
    print_line(&line, 4, 2);
}

void print_summary(const struct sheet *sheet)
{
    struct muslin_pressed_totals totals = { .size = (uint32_t)sizeof totals };
    struct line line = { .used = 0 };
    must(muslin_pressing_totals(sheet->plan, &totals, NULL), NULL);
    printf("\nPRESS\n");
    add(&line, "Each step says which way its seams go. Seams of two parts that are sewn together meet at %" PRId64
        " places of the top. ",
        totals.meetings);
    if (totals.exceptions == 0)
        add(&line, "Pressed as said, they lie opposite ways at every one of them, so that they lock into each other.");
    else
        add(&line, "Pressed as said, they lock into each other at all but %" PRId64 " of them: there press one of the "
            "two seams open for an inch, or accept the lump. They lie in:", totals.exceptions);
    print_line(&line, 2, 0);
    for (size_t i = 0; i < sheet->exceptions_count; i++)
        if (!is_told(sheet, i, 0))
            print_exception(sheet, i);
}
