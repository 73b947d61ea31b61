/* press.c - the pressing plan in words: each part's seams, and how well they nest.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"

enum { PATCHES_MOST = 16 };

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

/* ---- units ------------------------------------------------------------------------------------------------------ */

/* Of other units the recipe says itself which way: their seams run on through a middle where others end. */
int is_pressed_by_plan(const struct unit *unit)
{
    return unit->spec.kind == MUSLIN_UNIT_HALF_SQUARE || unit->spec.kind == MUSLIN_UNIT_FLYING_GEESE ||
           unit->spec.kind == MUSLIN_UNIT_SQUARE_IN_SQUARE || unit->spec.kind == MUSLIN_UNIT_SNOWBALL;
}

/* Twice where the middle of a seam lies, next to twice the middle of the unit: -1, 0, 1. */
static int beside_middle(muslin_len from, muslin_len to, muslin_len size)
{
    return (int)muslin_length_compare(from, size - to);
}

static const char *place_of(const struct muslin_pressed_seam *seam, const struct muslin_node_size *size)
{
    static const char *const names[3][3] = { { " at the lower left", " below", " at the lower right" },
                                             { " at the left", "", " at the right" },
                                             { " at the upper left", " above", " at the upper right" } };
    int across = beside_middle(seam->from_x, seam->to_x, size->finished_width);
    int up = beside_middle(seam->from_y, seam->to_y, size->finished_height);
    return names[up + 1][across + 1];
}

/* How far to the right a patch lies: the mean of its corners, as nearly as is needed to tell two apart. */
static muslin_len centre_of(const struct muslin_outline_corner *corners, int64_t count)
{
    muslin_len sum = 0;
    for (int64_t i = 0; i < count; i++)
        sum += corners[i].x;
    return sum / count;
}

/* The fabric that a seam of a unit is pressed towards: that of its left or its right patch, told by their corners. */
static muslin_id fabric_towards(const struct sheet *sheet, const struct muslin_pressed_seam *seam)
{
    struct muslin_outline rows[PATCHES_MOST];
    struct muslin_outline_corner corners[8 * PATCHES_MOST];
    muslin_id fabrics[2] = { 0, 0 };
    muslin_len reach[2] = { 0, 0 };
    size_t count;
    int found = 0;
    must(muslin_solution_outlines(sheet->solution, seam->node, MUSLIN_STAGE_FINISHED, 0, rows, sizeof rows[0],
                                  PATCHES_MOST, corners, sizeof corners[0], 8 * PATCHES_MOST, &count, &count, NULL),
         NULL);
    for (size_t i = 0; i < count; i++) {
        const struct muslin_outline_corner *corner = corners + rows[i].first_corner;
        int touches = 0;
        for (int64_t k = 0; k < rows[i].corners; k++)
            touches |= corner[k].seam_node == seam->node && corner[k].seam == seam->seam;
        if (!touches || found == 2)
            continue;
        fabrics[found] = rows[i].fabric;
        reach[found++] = centre_of(corner, rows[i].corners);
    }
    int is_left = reach[0] < reach[1];
    return fabrics[(seam->towards == 1) != is_left];
}

void print_unit_pressing(const struct sheet *sheet, muslin_id node)
{
    struct line line = { .used = 0 };
    size_t count;
    const struct unit *unit = unit_of(sheet, node);
    const struct muslin_pressed_seam *seams = seams_of(sheet, node, &count);
    struct muslin_node_size size = size_of(sheet, node);
    char text[16];
    if (!is_pressed_by_plan(unit))
        return;
    add(&line, "Press ");
    for (size_t i = 0; i < count; i++)
        add(&line, "%sthe seam%s %s, towards %s", i == 0 ? "" : i + 1 == count ? ", and " : ", ",
            place_of(&seams[i], &size), direction(seams[i].press),
            fabric_name(sheet, fabric_towards(sheet, &seams[i])));
    if (seams->other_way > 0)
        add(&line, "; of %s* the other way", letter(sheet, node, text));
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

void print_summary(const struct sheet *sheet)
{
    struct muslin_pressed_totals totals = { .size = (uint32_t)sizeof totals };
    struct line line = { .used = 0 };
    must(muslin_pressing_totals(sheet->plan, &totals, NULL), NULL);
    printf("\nPRESS\n");
    add(&line, "Each step says which way its seams go. Seams of two parts meet at %" PRId64 " places of the top. ",
        totals.meetings);
    if (totals.exceptions == 0)
        add(&line, "Pressed as said, they lie opposite ways at every one of them, so that they lock into each other.");
    else
        add(&line, "Pressed as said, they lock into each other at all but %" PRId64 " of them: there press one of the "
            "two seams open.", totals.exceptions);
    print_line(&line, 2, 0);
}
