/* parts.c - what the pieces and parts of a quilt are called, and which rows of the library are theirs.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "sheet.h"

/* ---- nodes ------------------------------------------------------------------------------------------------------ */

const char *fabric_name(const struct sheet *sheet, muslin_id fabric)
{
    for (int i = 0; i < sheet->design->cloths_used; i++)
        if (sheet->design->cloths[i].id == fabric)
            return sheet->design->cloths[i].name;
    return "cloth";
}

struct muslin_node node_of(const struct sheet *sheet, muslin_id node)
{
    struct muslin_node row = { .size = (uint32_t)sizeof row };
    must(muslin_quilt_node(sheet->design->quilt, node, &row, NULL), NULL);
    return row;
}

struct muslin_node_size size_of(const struct sheet *sheet, muslin_id node)
{
    struct muslin_node_size size = { .size = (uint32_t)sizeof size };
    must(muslin_solution_size(sheet->solution, node, &size, NULL), NULL);
    return size;
}

/* The name that was given last. */
const struct named *named_of(const struct sheet *sheet, muslin_id node)
{
    for (int i = sheet->design->names_used - 1; i >= 0; i--)
        if (sheet->design->names[i].id == node)
            return &sheet->design->names[i];
    return NULL;
}

const struct unit *unit_of(const struct sheet *sheet, muslin_id node)
{
    for (int i = 0; i < sheet->design->units_used; i++)
        if (sheet->design->units[i].id == node)
            return &sheet->design->units[i];
    return NULL;
}

static int taken_other_way(const struct sheet *sheet, muslin_id parent, size_t place)
{
    for (size_t i = 0; i < sheet->children_count; i++)
        if (sheet->children[i].node == parent && sheet->children[i].place == (int64_t)place)
            return sheet->children[i].other_way;
    return 0;
}

struct lying lying_at(const struct sheet *sheet, muslin_id parent, size_t place, muslin_id child)
{
    struct lying part = { child, 0, 0, taken_other_way(sheet, parent, place) };
    struct muslin_node node = node_of(sheet, child);
    if (node.kind != MUSLIN_NODE_TURN)
        return part;
    size_t count;
    muslin_id *of = children_of(sheet, child, &count);
    part.node = of[0];
    part.quarter_turns = node.quarter_turns;
    part.mirrored = node.mirrored;
    part.other_way ^= taken_other_way(sheet, child, 0);
    free(of);
    return part;
}

/* ---- letters and names ------------------------------------------------------------------------------------------ */

int64_t step_of(const struct sheet *sheet, muslin_id node)
{
    int64_t step = -1;
    for (size_t i = 0; i < sheet->steps_count; i++)
        if (sheet->steps[i].node == node)
            step = (int64_t)i;
    return step;
}

const char *letter(const struct sheet *sheet, muslin_id node, char text[16])
{
    int64_t step = step_of(sheet, node);
    size_t need;
    text[0] = '\0';
    if (step >= 0)
        must(muslin_sewing_label(sheet->steps[step].stack, text, 16, &need, NULL), NULL);
    return text;
}

static const char *kind_name(const struct sheet *sheet, muslin_id node)
{
    struct muslin_node row = node_of(sheet, node);
    const struct unit *unit = unit_of(sheet, node);
    if (unit != NULL)
        return unit_name(unit->spec.kind);
    if (row.kind == MUSLIN_NODE_SET_IN)
        return "mitred border";
    return row.axis == MUSLIN_DOWN ? "rows joined" : "row";
}

void add_name(struct line *line, const struct sheet *sheet, muslin_id node)
{
    static const char *const sides[] = { "", ", left side", ", right side", ", top", ", bottom" };
    const struct named *named = named_of(sheet, node);
    if (named == NULL) {
        add(line, "%s", kind_name(sheet, node));
        return;
    }
    add(line, "%s%s", named->name, sides[named->side]);
    if (named->log > 0)
        add(line, named->log == 1 ? ", centre and log %d" : ", log %d", named->log);
}

/* ---- pieces ------------------------------------------------------------------------------------------------------ */

int is_cut_for(const struct sheet *sheet, size_t cut, muslin_id node)
{
    size_t count;
    int found = 0;
    must(muslin_solution_cut_nodes(sheet->solution, (int64_t)cut, NULL, 0, &count, NULL), NULL);
    muslin_id *ids = calloc(count + 1, sizeof *ids);
    if (ids == NULL)
        must(MUSLIN_ERR_NO_MEMORY, NULL);
    must(muslin_solution_cut_nodes(sheet->solution, (int64_t)cut, ids, count, &count, NULL), NULL);
    for (size_t i = 0; i < count; i++)
        found |= ids[i] == node;
    free(ids);
    return found;
}

int64_t cut_of_patch(const struct sheet *sheet, muslin_id patch)
{
    for (size_t i = 0; i < sheet->cuts_count; i++)
        if (sheet->cuts[i].source == MUSLIN_CUT_PATCH && is_cut_for(sheet, i, patch))
            return (int64_t)i;
    return -1;
}

/* The fabric of a patch, as it is drawn. */
static muslin_id fabric_of(const struct sheet *sheet, muslin_id patch)
{
    struct muslin_outline outline = { .size = (uint32_t)sizeof outline };
    struct muslin_outline_corner corners[4];
    size_t count;
    size_t given;
    must(muslin_solution_outlines(sheet->solution, patch, MUSLIN_STAGE_FINISHED, 0, &outline, sizeof outline, 1,
                                  corners, sizeof corners[0], 4, &count, &given, NULL),
         NULL);
    return outline.fabric;
}

/* Strips lie along the seams of their set. */
int64_t cut_of_strip(const struct sheet *sheet, muslin_id join, muslin_id patch)
{
    struct muslin_node_size size = size_of(sheet, patch);
    muslin_len width = node_of(sheet, join).axis == MUSLIN_ACROSS ? size.unfinished_width : size.unfinished_height;
    muslin_id fabric = fabric_of(sheet, patch);
    for (size_t i = 0; i < sheet->cuts_count; i++)
        if (sheet->cuts[i].source == MUSLIN_CUT_SET_STRIP && sheet->cuts[i].fabric == fabric &&
            sheet->cuts[i].cut_height == width && is_cut_for(sheet, i, join))
            return (int64_t)i;
    return -1;
}

void add_part(struct line *line, const struct sheet *sheet, const struct lying *part)
{
    char text[WORD];
    int64_t cut = cut_of_patch(sheet, part->node);
    if (cut >= 0) {
        const struct muslin_cut *row = &sheet->cuts[cut];
        add(line, "[%d] %s, cut %s", sheet->piece[cut], fabric_name(sheet, row->fabric),
            inches_by(row->cut_width, row->cut_height, text));
        return;
    }
    add(line, "%s%s (", letter(sheet, part->node, text), part->other_way ? "*" : "");
    add_name(line, sheet, part->node);
    add(line, ")%s%s", part->mirrored ? " in mirror image" : "", turned(part->quarter_turns));
}
