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

static const char *kind_name(const struct worked *worked, muslin_id node)
{
    struct muslin_node row = node_of(worked, node);
    const struct unit_asked *unit = unit_of(worked->design, node);
    if (unit != NULL)
        return unit_name(unit->spec.kind);
    switch (row.kind) {
    case MUSLIN_NODE_SET_IN:
        return "mitred border";
    case MUSLIN_NODE_SHAPE:
        return "unit of its own shape";
    case MUSLIN_NODE_TRIM:
        return "part to be trimmed";
    case MUSLIN_NODE_PINWHEEL:
        return "strips round a centre";
    case MUSLIN_NODE_DIAGONAL:
        return "centre on point";
    case MUSLIN_NODE_SIXTY:
        return "rows of triangles";
    default:
        return row.axis == MUSLIN_DOWN ? "rows joined" : "row";
    }
}

static bool is_fed(const struct worked *worked, int64_t step, muslin_id node)
{
    for (size_t i = 0; step >= 0 && i < worked->feeds[step].count; i++)
        if (worked->feeds[step].rows[i].node == node)
            return true;
    return false;
}

/* A part without a name: of a border, both its sides with the middle, or the strip with its corners. */
static void add_kind(struct line *line, const struct worked *worked, muslin_id node)
{
    const int64_t step = step_of(worked, node);
    const struct border_asked *border = step < 0 ? NULL : border_of_step(worked, (size_t)step);
    if (border == NULL || !is_fed(worked, step_of(worked, border->outside), node))
        add(line, "%s", kind_name(worked, node));
    else
        add(line, is_fed(worked, step, border->inside) ? "%s, left and right" : "%s, top and bottom", border->name);
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
        add(line, named->log == 1 ? ", centre and log %d" : ", log %d", named->log);
}

void add_part(struct line *line, const struct worked *worked, const struct lying *part)
{
    char text[WORD_ROOM];
    char letter[16];
    int64_t cut = cut_of_patch(worked, part->node);
    if (cut >= 0) {
        const struct muslin_cut *row = &worked->cuts[cut];
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
        if (worked->seams[i].other_way > 0 && (worked->seams[i].other == MUSLIN_OTHER_TURNED) == is_turned)
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
    if (worked->cuts[cut].source != MUSLIN_CUT_PATCH)
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

size_t first_border_step(const struct worked *worked)
{
    const struct design *design = worked->design;
    if (design->borders_used == 0 || design->centre == design->top)
        return worked->steps_count;
    return (size_t)(step_of(worked, design->centre) + 1);
}
