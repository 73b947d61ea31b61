/* wording.c - words that several parts of the document share.
 *
 * SPDX-License-Identifier: MIT */
#include <ctype.h>
#include <stdlib.h>
#include <string.h>

#include "wording.h"

/* ---- words ------------------------------------------------------------------------------------------------------ */

const char *plural(int64_t count)
{
    return count == 1 ? "" : "s";
}

const char *comma(size_t i, size_t count)
{
    if (i == 0)
        return "";
    return i + 1 == count ? " and " : ", ";
}

const char *turned(int32_t quarter_turns)
{
    static const char *const words[] = { "", " turned a quarter to the right", " turned upside down",
                                         " turned a quarter to the left" };
    return words[quarter_turns];
}

const char *unit_name(int32_t kind)
{
    static const char *const names[] = { "unit", "rectangle", "half-square triangles", "quarter-square triangles",
                                         "split quarters", "flying geese", "square in a square", "snowballs",
                                         "half-rectangle triangles", "60 degree triangles", "60 degree diamonds",
                                         "45 degree diamonds", "hexagons", "half-hexagons", "trapezoids", "octagons",
                                         "eight-pointed star", "kaleidoscopes", "slices" };
    return kind > 0 && kind < (int32_t)(sizeof names / sizeof names[0]) ? names[kind] : names[0];
}

const char *direction_name(int32_t press)
{
    static const char *const words[] = { "", "to the left", "to the right", "upwards", "downwards", "open" };
    return words[press];
}

const char *word(const struct worked *worked, enum chosen_word which)
{
    return worked->design->pattern->words[which];
}

const char *capital(const struct worked *worked, enum chosen_word which, char text[WORD_ROOM])
{
    snprintf(text, WORD_ROOM, "%s", word(worked, which));
    text[0] = (char)toupper((unsigned char)text[0]);
    return text;
}

const char *sash(const struct worked *worked)
{
    return strcmp(word(worked, WORD_SASHING), "lattice") == 0 ? "lattice strip" : "sash";
}

const char *sashes(const struct worked *worked)
{
    return strcmp(word(worked, WORD_SASHING), "lattice") == 0 ? "lattice strips" : "sashes";
}

const char *spelt(const struct worked *worked, enum spelt which)
{
    static const char *const colour[] = { "mitre", "mitred", "centre", "neighbours" };
    static const char *const color[] = { "miter", "mitered", "center", "neighbors" };
    return strcmp(word(worked, WORD_COLOR), "colour") == 0 ? colour[which] : color[which];
}

void write_fabric_heading(struct document *document, const struct worked *worked, muslin_id fabric)
{
    const struct cloth *cloth = cloth_of(worked->design, fabric);
    char head[WORD_ROOM];
    say(document, ITEM_SUBHEADING, 0, NULL, "%s %s, %s", capital(worked, WORD_FABRIC, head), cloth->letter,
        cloth->name);
}

/* ---- names ------------------------------------------------------------------------------------------------------ */

static bool is_fed(const struct worked *worked, int64_t step, muslin_id node)
{
    for (size_t i = 0; step >= 0 && i < worked->feeds[step].count; i++)
        if (worked->feeds[step].rows[i].node == node)
            return true;
    return false;
}

/* The step that takes a node, or -1. */
static int64_t step_that_takes(const struct worked *worked, muslin_id node)
{
    for (size_t i = 0; i < worked->steps_count; i++)
        if (worked->steps[i].node != node && is_fed(worked, (int64_t)i, node))
            return (int64_t)i;
    return -1;
}

/* The block that a node is in, or null. */
static const struct named *block_around(const struct worked *worked, muslin_id node)
{
    for (int64_t step = step_that_takes(worked, node); step >= 0; step = step_that_takes(worked, node)) {
        node = worked->steps[step].node;
        const struct named *named = named_of(worked->design, node);
        if (named != NULL && named->name != NULL)
            return named->is_block ? named : NULL;
    }
    return NULL;
}

static bool has_block(const struct worked *worked, muslin_id row)
{
    const struct feeds *feeds = &worked->feeds[step_of(worked, row)];
    for (size_t i = 0; i < feeds->count; i++) {
        const struct named *named = named_of(worked->design, feeds->rows[i].node);
        if (named != NULL && named->is_block)
            return true;
    }
    return false;
}

/* "lamp row" of a lamp block; "block row"; "sash row". */
static void add_row_name(struct line *line, const struct worked *worked, muslin_id row)
{
    static const char tail[] = " block";
    const struct named *block = block_around(worked, row);
    if (step_of(worked, row) < 0 || (block == NULL && !has_block(worked, row) && !worked->design->has_sashes)) {
        add(line, "row");
    } else if (block == NULL) {
        add(line, "%s row", has_block(worked, row) ? "block" : sash(worked));
    } else {
        size_t length = strlen(block->name);
        if (length >= sizeof tail && strcmp(block->name + length + 1 - sizeof tail, tail) == 0)
            length -= sizeof tail - 1;
        add(line, "%.*s row", (int)length, block->name);
    }
}

static const char *kind_name(const struct worked *worked, muslin_id node)
{
    struct muslin_node row = node_of(worked, node);
    const struct unit_asked *unit = unit_of(worked->design, node);
    if (unit != NULL)
        return unit_name(unit->spec.kind);
    switch (row.kind) {
    case MUSLIN_NODE_SET_IN:
        return strcmp(spelt(worked, MITRED), "mitred") == 0 ? "mitred border" : "mitered border";
    case MUSLIN_NODE_SHAPE:
        return "unit of its own shape";
    case MUSLIN_NODE_TRIM:
        return "part to be trimmed";
    case MUSLIN_NODE_PINWHEEL:
        return "strips round a middle";
    case MUSLIN_NODE_DIAGONAL:
        return "field on point";
    case MUSLIN_NODE_SIXTY:
        return "rows of triangles";
    default:
        return "rows joined";
    }
}

/* A part without a name: of a border, both its sides with the middle, or the strip with its corners. */
static void add_kind(struct line *line, const struct worked *worked, muslin_id node)
{
    const struct muslin_node row = node_of(worked, node);
    const int64_t step = step_of(worked, node);
    const struct border_asked *border = step < 0 ? NULL : border_of_step(worked, (size_t)step);
    if (border != NULL && is_fed(worked, step_of(worked, border->outside), node))
        add(line, is_fed(worked, step, border->inside) ? "%s, left and right" : "%s, top and bottom", border->name);
    else if (unit_of(worked->design, node) == NULL && row.kind == MUSLIN_NODE_JOIN && row.axis == MUSLIN_AXIS_ACROSS)
        add_row_name(line, worked, node);
    else
        add(line, "%s", kind_name(worked, node));
}

void add_name(struct line *line, const struct worked *worked, muslin_id node)
{
    static const char *const sides[] = { "", ", left side", ", right side", ", top", ", bottom" };
    const struct named *named = named_of(worked->design, node);
    if (named == NULL || named->name == NULL) {
        add_kind(line, worked, node);
        return;
    }
    add(line, "%s%s", named->name, sides[named->side]);
    if (named->log > 0)
        add(line, named->log == 1 ? ", %s and log %d" : ", %slog %d", named->log == 1 ? spelt(worked, CENTRE) : "",
            named->log);
}

void add_again_part(struct line *line, const struct worked *worked, const struct lying *part)
{
    char letter[16];
    const int64_t cut = cut_of_patch(worked, part->node);
    if (cut >= 0)
        add(line, "[%d]", worked->piece[cut]);
    else
        add(line, "%s%s%s%s", letter_of(worked, part->node, letter), part->other_way ? "*" : "",
            part->mirrored ? " in mirror image" : "", turned(part->quarter_turns));
}

void add_part(struct line *line, const struct worked *worked, const struct lying *part)
{
    char text[WORD_ROOM];
    char letter[16];
    int64_t cut = cut_of_patch(worked, part->node);
    if (cut >= 0) {
        const struct muslin_solution_cut *row = &worked->cuts[cut];
        add(line, "[%d] %s, cut %s", worked->piece[cut], fabric_name(worked, row->fabric),
            measured_by(worked, row->cut_width, row->cut_height, text));
        return;
    }
    add(line, "%s%s (", letter_of(worked, part->node, letter), part->other_way ? "*" : "");
    add_name(line, worked, part->node);
    add(line, ")%s%s", part->mirrored ? " in mirror image" : "", turned(part->quarter_turns));
}

bool has_other_way(const struct worked *worked, bool is_turned)
{
    for (size_t i = 0; i < worked->seams_count; i++)
        if (worked->seams[i].other_way > 0 && (worked->seams[i].other == MUSLIN_OTHER_WAY_TURNED) == is_turned)
            return true;
    return false;
}

const struct point_field *point_field_of(const struct worked *worked, muslin_id node)
{
    for (size_t i = 0; i < worked->design->fields_used; i++)
        if (worked->design->fields[i].id == node)
            return &worked->design->fields[i];
    return NULL;
}

bool is_nothing(const struct worked *worked, muslin_len length)
{
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    return length < (in_inches ? MUSLIN_TICKS_PER_INCH / 8 : MUSLIN_TICKS_PER_MM);
}

bool is_little(const struct worked *worked, muslin_len length)
{
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    return length < (in_inches ? MUSLIN_TICKS_PER_INCH : 25 * MUSLIN_TICKS_PER_MM);
}

/* ---- borders ----------------------------------------------------------------------------------------------------- */

const struct border_asked *border_of_step(const struct worked *worked, size_t step)
{
    const struct design *design = worked->design;
    if (step < first_border_step(worked))
        return NULL;
    for (size_t i = 0; i < design->borders_used; i++)
        if ((int64_t)step <= step_of(worked, design->borders[i].outside))
            return &design->borders[i];
    return NULL;
}

/* Cornerstones are square, and what pieced strips are made of is no strip. */
bool is_border_strip(const struct worked *worked, size_t step, muslin_id patch)
{
    const struct border_asked *border = border_of_step(worked, step);
    if (border == NULL || border->corners == CORNERS_PIECED || border->corners == CORNERS_MITRED ||
        node_of(worked, patch).kind != MUSLIN_NODE_PATCH)
        return false;
    const struct muslin_node_size size = size_of(worked, patch);
    return size.finished_width != size.finished_height;
}

bool is_border_cut(const struct worked *worked, size_t cut)
{
    if (worked->cuts[cut].source != MUSLIN_CUT_SOURCE_PATCH)
        return false;
    for (size_t i = first_border_step(worked); i < worked->steps_count; i++) {
        const struct feeds *feeds = &worked->feeds[i];
        for (size_t k = 0; k < feeds->count; k++)
            if (feeds->rows[k].step < 0 && is_border_strip(worked, i, feeds->rows[k].node) &&
                is_cut_for(worked, cut, feeds->rows[k].node))
                return true;
    }
    return false;
}

const struct border_asked *mitred_border_of(const struct worked *worked, size_t cut)
{
    const struct design *design = worked->design;
    for (size_t i = 0; i < design->borders_used; i++)
        if (design->borders[i].corners == CORNERS_MITRED && worked->cuts[cut].source == MUSLIN_CUT_SOURCE_MITRED &&
            is_cut_for(worked, cut, design->borders[i].outside))
            return &design->borders[i];
    return NULL;
}

size_t first_border_step(const struct worked *worked)
{
    const struct design *design = worked->design;
    if (design->borders_used == 0 || design->centre == design->top)
        return worked->steps_count;
    return (size_t)(step_of(worked, design->centre) + 1);
}
