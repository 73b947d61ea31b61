/* parts.c - what the pieces and parts of a quilt are called, and which rows of the library are theirs.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "worked.h"

/* ---- nodes ------------------------------------------------------------------------------------------------------ */

const char *fabric_name(const struct worked *worked, muslin_id fabric)
{
    return cloth_of(worked->design, fabric)->name;
}

muslin_id *children_of(const struct worked *worked, muslin_id node, size_t *count)
{
    must(muslin_quilt_children(worked->design->quilt, node, NULL, 0, count, NULL));
    muslin_id *ids = rows_for(*count, sizeof *ids);
    must(muslin_quilt_children(worked->design->quilt, node, ids, *count, count, NULL));
    return ids;
}

struct muslin_node node_of(const struct worked *worked, muslin_id node)
{
    struct muslin_node row = { .size = (uint32_t)sizeof row };
    must(muslin_quilt_node(worked->design->quilt, node, &row, NULL));
    return row;
}

struct muslin_node_size size_of(const struct worked *worked, muslin_id node)
{
    struct muslin_node_size size = { .size = (uint32_t)sizeof size };
    must(muslin_solution_size(worked->solution, node, &size, NULL));
    return size;
}

const char *place_in_file(const struct worked *worked, muslin_id node)
{
    const char *place = place_made(worked->design, node);
    const char *nearest = place_made(worked->design, worked->design->top);
    muslin_id holder = worked->design->top;
    size_t count;
    if (place != NULL)
        return place;
    must(muslin_solution_path(worked->solution, node, NULL, 0, &count, NULL));
    int64_t *steps = rows_for(count, sizeof *steps);
    must(muslin_solution_path(worked->solution, node, steps, count, &count, NULL));
    for (size_t i = 0; i < count; i++) {
        size_t children;
        muslin_id *ids = children_of(worked, holder, &children);
        holder = ids[steps[i]];
        free(ids);
        place = place_made(worked->design, holder);
        nearest = place != NULL ? place : nearest;
    }
    free(steps);
    return nearest != NULL ? nearest : "/top";
}

const char *place_of_part(const struct worked *worked, muslin_id node, int64_t part)
{
    size_t count;
    if (part < 0 || node_of(worked, node).kind == MUSLIN_NODE_SET_IN)
        return NULL;
    muslin_id *ids = children_of(worked, node, &count);
    const char *place = (size_t)part < count ? place_made(worked->design, ids[part]) : NULL;
    free(ids);
    return place;
}

static const struct muslin_pressing_child *child_row(const struct worked *worked, muslin_id parent, size_t place)
{
    for (size_t i = 0; i < worked->children_count; i++)
        if (worked->children[i].node == parent && worked->children[i].place == (int64_t)place)
            return &worked->children[i];
    return NULL;
}

static bool taken_other_way(const struct worked *worked, muslin_id parent, size_t place)
{
    const struct muslin_pressing_child *row = child_row(worked, parent, place);
    return row != NULL && row->other_way != 0;
}

struct lying lying_at(const struct worked *worked, muslin_id parent, size_t place, muslin_id child)
{
    struct lying part = { child, 0, 0, taken_other_way(worked, parent, place) };
    struct muslin_node node = node_of(worked, child);
    if (node.kind != MUSLIN_NODE_TURN)
        return part;
    size_t count;
    muslin_id *of = children_of(worked, child, &count);
    part.node = of[0];
    part.quarter_turns = node.quarter_turns;
    part.mirrored = node.mirrored;
    part.other_way = part.other_way != taken_other_way(worked, child, 0);
    free(of);
    return part;
}

/* ---- steps and letters ------------------------------------------------------------------------------------------ */

int64_t step_of(const struct worked *worked, muslin_id node)
{
    int64_t step = -1;
    for (size_t i = 0; i < worked->steps_count; i++)
        if (worked->steps[i].node == node)
            step = (int64_t)i;
    return step;
}

const char *letter_of(const struct worked *worked, muslin_id node, char text[16])
{
    int64_t step = step_of(worked, node);
    size_t need;
    text[0] = '\0';
    if (step >= 0)
        must(muslin_sewing_label(worked->steps[step].stack, text, 16, &need, NULL));
    return text;
}

const struct muslin_pressing_seam *seams_of(const struct worked *worked, muslin_id node, size_t *count)
{
    const struct muslin_pressing_seam *first = NULL;
    *count = 0;
    for (size_t i = 0; i < worked->seams_count; i++) {
        if (worked->seams[i].node != node)
            continue;
        first = first == NULL ? &worked->seams[i] : first;
        ++*count;
    }
    return first;
}

/* ---- pieces ------------------------------------------------------------------------------------------------------ */

muslin_len cut_length(const struct worked *worked, size_t cut)
{
    muslin_len length = worked->cuts[cut].cut_width;
    if (worked->cuts[cut].source == MUSLIN_CUT_SOURCE_MITRED)
        must(muslin_length_add(length, worked->mitre_extra, &length));
    return length;
}

int64_t times_of(const struct bolt *bolt, const struct muslin_cutplan_strip *strip)
{
    return strip->times * (strip->holder >= 0 ? bolt->strips[strip->holder].times : 1);
}

bool is_joined(const struct worked *worked, size_t cut)
{
    const int32_t source = worked->cuts[cut].source;
    return worked->laid[cut] == MUSLIN_BLANK_JOINED &&
           (source == MUSLIN_CUT_SOURCE_PATCH || source == MUSLIN_CUT_SOURCE_MITRED);
}

enum laid_for laid_for(const struct worked *worked, int64_t label)
{
    if (label < (int64_t)worked->cuts_count)
        return LAID_CUT;
    return worked->design->has_binding && label == (int64_t)worked->cuts_count ? LAID_BINDING : LAID_SLEEVE;
}

const char *label_name(const struct worked *worked, int64_t label, char text[32])
{
    static const char *const names[] = { "", "binding", "sleeve" };
    const enum laid_for what = laid_for(worked, label);
    if (what == LAID_CUT)
        snprintf(text, 32, "[%d]", worked->piece[label]);
    else
        snprintf(text, 32, "%s", names[what]);
    return text;
}

bool is_cut_for(const struct worked *worked, size_t cut, muslin_id node)
{
    size_t count;
    bool found = false;
    must(muslin_solution_cut_nodes(worked->solution, (int64_t)cut, NULL, 0, &count, NULL));
    muslin_id *ids = rows_for(count, sizeof *ids);
    must(muslin_solution_cut_nodes(worked->solution, (int64_t)cut, ids, count, &count, NULL));
    for (size_t i = 0; i < count; i++)
        found = found || ids[i] == node;
    free(ids);
    return found;
}

int64_t cut_of_patch(const struct worked *worked, muslin_id patch)
{
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (worked->cuts[i].source == MUSLIN_CUT_SOURCE_PATCH && is_cut_for(worked, i, patch))
            return (int64_t)i;
    return -1;
}

enum mitred_sides mitred_sides(const struct worked *worked, size_t cut, muslin_id node)
{
    const struct muslin_node_size size = size_of(worked, node);
    bool is_longest = true;
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (worked->cuts[i].source == MUSLIN_CUT_SOURCE_MITRED &&
            worked->cuts[i].cut_width > worked->cuts[cut].cut_width && is_cut_for(worked, i, node))
            is_longest = false;
    if (size.finished_width == size.finished_height)
        return MITRED_ALL;
    return is_longest == (size.finished_height > size.finished_width) ? MITRED_BESIDE : MITRED_ACROSS;
}

/* Strips lie along the seams of their set. */
int64_t cut_of_strip(const struct worked *worked, muslin_id join, muslin_id patch)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    const struct muslin_node_size size = size_of(worked, patch);
    const bool is_across = node_of(worked, join).axis == MUSLIN_AXIS_ACROSS;
    const muslin_len width = is_across ? size.unfinished_width : size.unfinished_height;
    must(muslin_quilt_read_patch(worked->design->quilt, patch, &spec, NULL));
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (worked->cuts[i].source == MUSLIN_CUT_SOURCE_SET_STRIP && worked->cuts[i].fabric == spec.fabric &&
            worked->cuts[i].cut_height == width && is_cut_for(worked, i, join))
            return (int64_t)i;
    return -1;
}
