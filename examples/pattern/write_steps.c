/* write_steps.c - the sewing, step by step: what each part is made of, in order, how it is pressed, what it measures.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

#include "wording.h"

/* ---- what goes into it ------------------------------------------------------------------------------------------ */

static bool is_alike(const struct lying *a, const struct lying *b)
{
    return a->node == b->node && a->quarter_turns == b->quarter_turns && a->mirrored == b->mirrored &&
           a->other_way == b->other_way;
}

/* Whether one of the same number or letter stands before it. */
static bool is_told(const struct worked *worked, muslin_id join, const muslin_id *children, size_t place)
{
    const muslin_id node = lying_at(worked, join, place, children[place]).node;
    const int64_t cut = cut_of_patch(worked, node);
    for (size_t i = 0; i < place; i++) {
        const muslin_id other = lying_at(worked, join, i, children[i]).node;
        if (other == node || (cut >= 0 && cut_of_patch(worked, other) == cut))
            return true;
    }
    return false;
}

/* The children in their order; of the same one side by side it is said how many. */
static void write_order(struct document *document, const struct worked *worked, muslin_id join)
{
    struct line line = { NULL, 0, 0 };
    size_t count;
    muslin_id *children = children_of(worked, join, &count);
    add(&line, "From %s: ", node_of(worked, join).axis == MUSLIN_AXIS_ACROSS ? "left to right" : "top to bottom");
    for (size_t i = 0, next; i < count; i = next) {
        struct lying part = lying_at(worked, join, i, children[i]);
        for (next = i + 1; next < count; next++) {
            struct lying other = lying_at(worked, join, next, children[next]);
            if (!is_alike(&part, &other))
                break;
        }
        add(&line, "%s", i > 0 ? "; " : "");
        if (next - i > 1)
            add(&line, "%zu times ", next - i);
        if (is_told(worked, join, children, i))
            add_again_part(&line, worked, &part);
        else
            add_part(&line, worked, &part);
    }
    add(&line, ".");
    put(document, ITEM_POINT, 0, NULL, &line);
    free(children);
}

/* ---- the head of a step ------------------------------------------------------------------------------------------ */

/* Segments the other way, where whole sets are pressed so or some are pressed anew. */
static const char *how_segments(const struct worked *worked, const struct muslin_pressing_seam *seam, char *text)
{
    const struct muslin_stripset *set = set_of(worked, seam->node);
    const struct other_sets other = other_sets(worked, set, seam);
    if (other.anew == 0)
        return "cut from sets of their own, pressed the other way";
    if (other.sets == 0)
        return "pressed the other way once they are cut";
    snprintf(text, WORD_ROOM, "pressed the other way: %" PRId64 " in the set, %" PRId64 " once they are cut",
             seam->other_way - other.anew, other.anew);
    return text;
}

/* How copies the other way come about. */
static const char *how_other(const struct worked *worked, const struct muslin_pressing_seam *seam, bool is_segment,
                             char text[WORD_ROOM])
{
    if (seam->other == MUSLIN_OTHER_WAY_PRESSED)
        return "with every seam in it pressed the other way";
    if (seam->other == MUSLIN_OTHER_WAY_SETS)
        return how_segments(worked, seam, text);
    if (is_segment)
        return "the same, turned end for end when it is sewn in";
    return seam->turn == 1 ? "sewn and pressed the same, turned by a quarter when it is sewn in"
                           : "sewn and pressed the same, turned by a half when it is sewn in";
}

/* "make 12: 6 C, and 6 C* (with every seam in it pressed the other way)". */
static void add_copies(struct line *line, const struct worked *worked, const struct muslin_sewing_step *step)
{
    size_t count;
    char letter[16];
    char text[WORD_ROOM];
    const struct muslin_pressing_seam *seams = seams_of(worked, step->node, &count);
    const int64_t mirrored = step->kind == MUSLIN_SEWING_SET ? 0 : size_of(worked, step->node).mirrored;
    add(line, "make %" PRId64, step->alike);
    if (mirrored > 0)
        add(line, ", %" PRId64 " of them in mirror image", mirrored);
    if (step->kind == MUSLIN_SEWING_SET || count == 0 || seams->other_way == 0)
        return;
    letter_of(worked, step->node, letter);
    add(line, ": %" PRId64 " %s, and %" PRId64 " %s* (%s)", seams->as_shown, letter, seams->other_way, letter,
        how_other(worked, seams, step->kind == MUSLIN_SEWING_SEGMENTS, text));
}

/* A unit may have a name of its own. */
static void add_unit_kind(struct line *line, const struct worked *worked, muslin_id node)
{
    const struct unit_asked *unit = unit_of(worked->design, node);
    const struct named *named = named_of(worked->design, node);
    if (unit != NULL && named != NULL && strcmp(named->name, unit_name(unit->spec.kind)) != 0)
        add(line, " (%s)", unit_name(unit->spec.kind));
}

static void write_head(struct document *document, const struct worked *worked, size_t number)
{
    static const char *const titles[] = { "", "strip set for ", "segments: ", "units: ", "", "", "trimmed: ", "", "",
                                          "", "" };
    const struct muslin_sewing_step *step = &worked->steps[number];
    struct line line = { NULL, 0, 0 };
    char letter[16];
    add(&line, "%s", titles[step->kind]);
    add_name(&line, worked, step->node);
    add_unit_kind(&line, worked, step->node);
    add(&line, ", ");
    add_copies(&line, worked, step);
    put(document, ITEM_STEP, 0, letter_of(worked, step->node, letter), &line);
}

static void write_size(struct document *document, const struct worked *worked, const struct muslin_sewing_step *step)
{
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    const struct named *named = named_of(worked->design, step->node);
    const struct muslin_node_size size = size_of(worked, step->node);
    const bool is_block = named != NULL && named->is_block;
    add(&line, "%s %s unfinished", is_block ? "Measure: block" : "Measures",
        measured_by(worked, step->unfinished_width, step->unfinished_height, text));
    if (is_block || step->kind == MUSLIN_SEWING_UNIT || step->kind == MUSLIN_SEWING_SHAPE)
        add(&line, ", %s finished", measured_by(worked, size.finished_width, size.finished_height, text));
    add(&line, ".%s", step->node == worked->design->top ? " The top is done." : "");
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* ---- steps ------------------------------------------------------------------------------------------------------ */

/* Pictures where one would rather look than read: strip sets, blocks, and what has no rows. */
static void write_picture(struct document *document, const struct worked *worked, size_t number)
{
    const struct muslin_sewing_step *step = &worked->steps[number];
    const struct named *named = named_of(worked->design, step->node);
    char caption[128];
    char letter[16];
    letter_of(worked, step->node, letter);
    if (step->kind == MUSLIN_SEWING_SEGMENTS)
        return;
    if (step->kind == MUSLIN_SEWING_SET) {
        snprintf(caption, sizeof caption, "Strip set %s; arrows: press that way; dashed: where segments are cut",
                 letter);
        put_picture(document, PICTURE_STRIP_SET, worked, (int64_t)number, caption);
        return;
    }
    put_picture(document, PICTURE_STEP, worked, (int64_t)number, NULL);
    if (named != NULL && named->is_block) {
        snprintf(caption, sizeof caption, "Block %s, finished", letter);
        put_picture(document, PICTURE_NODE, worked, step->node, caption);
    }
}

static void write_step(struct document *document, const struct worked *worked, size_t number)
{
    const struct muslin_sewing_step *step = &worked->steps[number];
    write_head(document, worked, number);
    write_picture(document, worked, number);
    switch (step->kind) {
    case MUSLIN_SEWING_SET:
        write_set(document, worked, number);
        return;
    case MUSLIN_SEWING_SEGMENTS:
        write_segments(document, worked, number);
        break;
    case MUSLIN_SEWING_UNIT:
        write_recipe(document, worked, number);
        break;
    case MUSLIN_SEWING_SHAPE:
        write_shape(document, worked, number);
        break;
    case MUSLIN_SEWING_TRIM:
        write_trimming(document, worked, number);
        break;
    case MUSLIN_SEWING_PINWHEEL:
        write_pinwheel(document, worked, number);
        break;
    case MUSLIN_SEWING_SET_IN:
        write_set_in(document, worked, number);
        break;
    case MUSLIN_SEWING_DIAGONAL:
        write_field(document, worked, number);
        break;
    case MUSLIN_SEWING_SIXTY:
        write_sixty(document, worked, number);
        break;
    default:
        write_order(document, worked, step->node);
        write_join_pressing(document, worked, step->node);
        break;
    }
    write_clashes(document, worked, step->node);
    write_size(document, worked, step);
}

void write_some_steps(struct document *document, const struct worked *worked, size_t first, size_t last)
{
    for (size_t i = first; i < last; i++)
        write_step(document, worked, i);
}

void write_steps(struct document *document, const struct worked *worked)
{
    const size_t last = first_border_step(worked);
    say(document, ITEM_HEADING, 0, NULL, "Sewing");
    say(document, ITEM_SAY, 0, NULL, "The right side faces you; left, right, up and down are as the part lies in its "
        "own step. Drawings beside steps show the parts in the order they are sewn; arrows: press that way; a zigzag "
        "line: something is left out of the drawing. Sizes are unfinished unless it is said otherwise.");
    if (last == 0)
        say(document, ITEM_SAY, 0, NULL, "The middle is one piece: nothing is sewn before the borders.");
    write_some_steps(document, worked, 0, last);
}
