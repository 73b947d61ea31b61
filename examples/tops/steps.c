/* steps.c - the sewing, step by step: what each part is made of, in order, how it is pressed, what it measures.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"

/* ---- what goes into it ------------------------------------------------------------------------------------------ */

static int is_alike(const struct lying *a, const struct lying *b)
{
    return a->node == b->node && a->quarter_turns == b->quarter_turns && a->mirrored == b->mirrored &&
           a->other_way == b->other_way;
}

/* The children in their order; of the same one side by side it is said how many. */
static void print_order(const struct sheet *sheet, muslin_id join)
{
    struct line line = { .used = 0 };
    size_t count;
    muslin_id *children = children_of(sheet, join, &count);
    add(&line, "From %s: ", node_of(sheet, join).axis == MUSLIN_ACROSS ? "left to right" : "top to bottom");
    for (size_t i = 0, next; i < count; i = next) {
        struct lying part = lying_at(sheet, join, i, children[i]);
        for (next = i + 1; next < count; next++) {
            struct lying other = lying_at(sheet, join, next, children[next]);
            if (!is_alike(&part, &other))
                break;
        }
        if (i > 0)
            add(&line, "; ");
        if (next - i > 1)
            add(&line, "%zu times ", next - i);
        add_part(&line, sheet, &part);
    }
    add(&line, ".");
    print_line(&line, 9, 2);
    free(children);
}

/* Strips of a set: their fabrics, in the order in which they lie. */
static void print_strips(const struct sheet *sheet, const struct muslin_sewing_row *step)
{
    struct line line = { .used = 0 };
    char text[WORD];
    size_t count;
    muslin_id *children = children_of(sheet, step->node, &count);
    add(&line, "Sew strips long side to long side, from %s: ",
        node_of(sheet, step->node).axis == MUSLIN_ACROSS ? "left to right" : "top to bottom");
    for (size_t i = 0; i < count; i++) {
        struct lying part = lying_at(sheet, step->node, i, children[i]);
        int64_t cut = cut_of_strip(sheet, step->node, part.node);
        add(&line, "%s[%d] %s", i == 0 ? "" : ", ", sheet->piece[cut], fabric_name(sheet, sheet->cuts[cut].fabric));
    }
    add(&line, ". The set is %s wide unfinished.", inches(step->unfinished_width, text));
    print_line(&line, 9, 2);
    free(children);
}

/* A last set for one or two segments can be sewn of short strips. */
static void add_short_set(struct line *line, const struct muslin_strip_set *set)
{
    char text[WORD];
    const int64_t last = set->segments - (set->sets - 1) * set->segments_per_set;
    if (set->sets > 1 && last <= 2)
        add(line, " The last set is sewn for only %" PRId64 " of them: strips %s long are enough for it.", last,
            inches(last * set->segment_cut + INCH, text));
}

/* What is cut from the sets, and what a set gives. */
static void print_segments(const struct sheet *sheet, const struct muslin_sewing_row *step)
{
    struct line line = { .used = 0 };
    char text[WORD];
    for (size_t i = 0; i < sheet->sets_count; i++) {
        const struct muslin_strip_set *set = &sheet->sets[i];
        if (set->node != step->node)
            continue;
        add(&line, "Square one end of each set (1/2 in is reckoned at either end) and cut segments %s wide across it. ",
            inches(set->segment_cut, text));
        add(&line, "A set gives %" PRId64, set->segments_per_set);
        if (set->sets > 1)
            add(&line, ", %" PRId64 " sets give %" PRId64, set->sets, set->sets * set->segments_per_set);
        add(&line, "; %" PRId64 " needed, %" PRId64 " over.", set->segments, set->spare);
        add_short_set(&line, set);
    }
    print_line(&line, 9, 2);
}

/* ---- steps ------------------------------------------------------------------------------------------------------ */

static void print_size(const struct sheet *sheet, const struct muslin_sewing_row *step)
{
    struct line line = { .used = 0 };
    char text[WORD];
    const struct named *named = named_of(sheet, step->node);
    int is_block = named != NULL && named->is_block;
    add(&line, "%s %s unfinished.", is_block ? "Measure: block" : "Measures",
        inches_by(step->unfinished_width, step->unfinished_height, text));
    if (step->node == sheet->design->top)
        add(&line, " The top is done.");
    print_line(&line, 9, 2);
}

/* How copies the other way come about. */
static const char *how_other(const struct muslin_pressed_seam *seam, int is_segment)
{
    static const char *const how[] = { "", "", "with every seam in it pressed the other way",
                                       "cut from sets of their own, pressed the other way" };
    if (seam->other != MUSLIN_OTHER_TURNED)
        return how[seam->other];
    if (is_segment)
        return "the same, turned end for end when it is sewn in";
    return seam->turn == 1 ? "sewn and pressed the same, turned by a quarter when it is sewn in"
                           : "sewn and pressed the same, turned by a half when it is sewn in";
}

/* "Make 12: 6 as said here (C), 6 with every seam pressed the other way (C*)". */
static void add_copies(struct line *line, const struct sheet *sheet, const struct muslin_sewing_row *step)
{
    size_t count;
    char text[16];
    const struct muslin_pressed_seam *seams = seams_of(sheet, step->node, &count);
    add(line, "make %" PRId64, step->alike);
    if (step->kind == MUSLIN_SEWING_SET || count == 0 || seams->other_way == 0)
        return;
    letter(sheet, step->node, text);
    add(line, ": %" PRId64 " %s, and %" PRId64 " %s* (%s)", seams->as_shown, text, seams->other_way, text,
        how_other(seams, step->kind == MUSLIN_SEWING_SEGMENTS));
}

static void print_title(const struct sheet *sheet, size_t number)
{
    static const char *const titles[] = { "", "strip set for ", "segments: ", "units: ", "", "", "trimmed ", "", "", "",
                                          "" };
    const struct muslin_sewing_row *step = &sheet->steps[number];
    struct line line = { .used = 0 };
    char text[16];
    add(&line, "%2zu  %-3s %s", number + 1, letter(sheet, step->node, text), titles[step->kind]);
    add_name(&line, sheet, step->node);
    add(&line, ", ");
    add_copies(&line, sheet, step);
    print_line(&line, 2, 7);
}

static void print_mitred(const struct sheet *sheet, const struct muslin_sewing_row *step)
{
    struct line line = { .used = 0 };
    size_t count;
    muslin_id *centre = children_of(sheet, step->node, &count);
    struct lying part = lying_at(sheet, step->node, 0, centre[0]);
    add(&line, "In the middle: ");
    add_part(&line, sheet, &part);
    add(&line, ". Sew a border strip");
    for (size_t i = 0; i < sheet->cuts_count; i++)
        if (sheet->cuts[i].source == MUSLIN_CUT_MITRED && (i == 0 || sheet->piece[i] != sheet->piece[i - 1]))
            add(&line, " [%d]", sheet->piece[i]);
    add(&line, " to each side, middle on middle, so that it stands out alike at both ends: begin and stop 1/4 in from "
        "the corners of the middle part and secure the stitches. Then mitre each corner: fold it on the diagonal, "
        "strips on each other; draw a line at 45 degrees from the last stitch to the outer edge; sew on it from the "
        "inside outwards; trim 1/4 in beyond the seam.");
    print_line(&line, 9, 2);
    free(centre);
}

static void print_step(const struct sheet *sheet, size_t number)
{
    const struct muslin_sewing_row *step = &sheet->steps[number];
    print_title(sheet, number);
    switch (step->kind) {
    case MUSLIN_SEWING_SET:
        print_strips(sheet, step);
        print_join_pressing(sheet, step->node);
        return;
    case MUSLIN_SEWING_SEGMENTS:
        print_segments(sheet, step);
        break;
    case MUSLIN_SEWING_UNIT:
        print_recipe(sheet, step);
        break;
    case MUSLIN_SEWING_SET_IN:
        print_mitred(sheet, step);
        print_mitred_pressing(sheet, step->node);
        break;
    case MUSLIN_SEWING_DIAGONAL:
        print_field(sheet, step);
        break;
    default:
        print_order(sheet, step->node);
        print_join_pressing(sheet, step->node);
        break;
    }
    print_size(sheet, step);
}

void print_steps(const struct sheet *sheet)
{
    printf("\nSEW (the right side faces you; left, right, up and down are as the part lies in its own step)\n");
    for (size_t i = 0; i < sheet->steps_count; i++)
        print_step(sheet, i);
}
