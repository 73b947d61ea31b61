/* write_cuts.c - the cutting list: every piece with its number, how many, what size, how it is cut again, its use.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

/* ---- what it is for --------------------------------------------------------------------------------------------- */

/* A strip goes into the set that is cut apart again; a patch of which a set gives some goes into the other steps. */
static bool goes_into(const struct worked *worked, size_t step, const muslin_id *ids, size_t count)
{
    const struct muslin_sewing_step *row = &worked->steps[step];
    const struct feeds *feeds = &worked->feeds[step];
    for (size_t i = 0; i < count; i++) {
        if (row->node == ids[i] && row->kind != MUSLIN_SEWING_SEGMENTS)
            return true;
        for (size_t k = 0; k < feeds->count && row->kind != MUSLIN_SEWING_SET; k++)
            if (feeds->rows[k].step < 0 && feeds->rows[k].node == ids[i])
                return true;
    }
    return false;
}

/* The steps that it goes into: give them back with free(). */
static size_t *uses_of(const struct worked *worked, size_t cut, size_t *found)
{
    size_t count;
    size_t *steps = rows_for(worked->steps_count, sizeof *steps);
    *found = 0;
    must(muslin_solution_cut_nodes(worked->solution, (int64_t)cut, NULL, 0, &count, NULL));
    muslin_id *ids = rows_for(count, sizeof *ids);
    must(muslin_solution_cut_nodes(worked->solution, (int64_t)cut, ids, count, &count, NULL));
    for (size_t i = 0; i < worked->steps_count; i++)
        if (goes_into(worked, i, ids, count))
            steps[(*found)++] = i;
    free(ids);
    return steps;
}

/* "for C and E": the letters of all that it goes into. */
static void add_use(struct line *line, const struct worked *worked, size_t cut)
{
    char letter[16];
    size_t found;
    size_t *steps = uses_of(worked, cut, &found);
    for (size_t i = 0; i < found; i++)
        add(line, "%s%s", i == 0 ? ", for " : comma(i, found),
            letter_of(worked, worked->steps[steps[i]].node, letter));
    if (found == 1) {
        add(line, " (");
        add_name(line, worked, worked->steps[steps[0]].node);
        add(line, ")");
    }
    if (is_border_cut(worked, cut))
        add(line, "; cut after the top is measured through the middle, as long as it is there");
    free(steps);
}

/* ---- strips longer than the cloth is wide ----------------------------------------------------------------------- */

/* All of one fabric and one width are said once. */
static bool same_strips(const struct worked *worked, size_t one, size_t other)
{
    const struct muslin_solution_cut *a = &worked->cuts[one];
    const struct muslin_solution_cut *b = &worked->cuts[other];
    return is_joined(worked, one) && is_joined(worked, other) && a->fabric == b->fabric &&
           a->cut_height == b->cut_height;
}

static void write_joining(struct document *document, const struct worked *worked, size_t cut)
{
    char text[WORD_ROOM];
    say(document, ITEM_POINT, 0, NULL, "The cloth is not as wide as the next pieces are long: join each of them end to "
        "end from strips %s wide, with straight seams pressed open. The strips are laid out below; leave the shorter "
        "ones longer where their strip has cloth free, and trim what is joined when the top is measured:",
        measured(worked, worked->cuts[cut].cut_height, text));
}

/* ---- rows -------------------------------------------------------------------------------------------------------- */

static const char *shape_name(const struct muslin_solution_cut *cut)
{
    static const char *const names[] = { "", "", " triangles", " diamonds", " hexagons", " trapezoids", " wedges",
                                         " octagons", " slices" };
    if (cut->source == MUSLIN_CUT_SOURCE_TEMPLATE)
        return cut->count == 1 ? " piece" : " pieces";
    if (cut->shape == MUSLIN_CUT_SHAPE_RECTANGLE && cut->cut_width == cut->cut_height)
        return cut->count == 1 ? " square" : " squares";
    return names[cut->shape];
}

/* Shapes from strips: how high the strip is and how far apart the cuts are. */
static void add_strip_shape(struct line *line, const struct worked *worked, const struct muslin_solution_cut *cut)
{
    char text[WORD_ROOM];
    const muslin_len lengths[] = { cut->cut_width, cut->pitch };
    const int64_t counts[] = { 1, cut->count - 1 };
    muslin_len along;
    must(muslin_length_dot(lengths, counts, 2, &along));
    const bool one = muslin_length_compare(along, cloth_of(worked->design, cut->fabric)->usable_width) <= 0;
    add(line, "Cut %s, width of %s by %s, and from %s", one ? "1 strip" : "strips", word(worked, WORD_FABRIC),
        measured(worked, cut->cut_height, text), one ? "it" : "them");
    add(line, " %" PRId64 "%s: cut one end off at %d degrees", cut->count, shape_name(cut), (int)cut->angle);
    if (cut->shape == MUSLIN_CUT_SHAPE_DIAMONDS)
        add(line, ", then cut parallel to that, %s apart, measured square to the cut",
            measured(worked, cut->cut_height, text));
    else
        add(line, ", then go on with the ruler leaning to the one side and to the other in turn, %s wide at the "
            "widest", measured(worked, cut->wide_edge, text));
}

static const char *as_needed(int32_t method)
{
    switch (method) {
    case MUSLIN_UNIT_METHOD_TWO_AT_A_TIME:
        return ", leave whole: two units come of each pair";
    case MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME:
        return ", leave whole: four units come of one large and four small squares";
    case MUSLIN_UNIT_METHOD_EIGHT_AT_A_TIME:
        return ", leave whole: eight units come of each pair";
    case MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND:
    case MUSLIN_UNIT_METHOD_FOUR_MIDPOINTS:
        return ", leave whole: four units come of each pair";
    default:
        return "";
    }
}

static void add_again(struct line *line, const struct worked *worked, const struct muslin_solution_cut *cut)
{
    static const char *const setting[] = { "triangles", "triangles", "corner setting triangles",
                                           "side setting triangles" };
    const struct unit_asked *unit = unit_of(worked->design, cut->first_node);
    if (cut->again != MUSLIN_CUT_AGAIN_NO)
        add(line, ", cut %s on the diagonal: %" PRId64 " %s", cut->again == MUSLIN_CUT_AGAIN_ONCE ? "once" : "twice",
            cut->pieces, cut->source == MUSLIN_CUT_SOURCE_SETTING ? setting[cut->again] : "triangles");
    else if (cut->source == MUSLIN_CUT_SOURCE_UNIT && unit != NULL)
        add(line, "%s", as_needed(unit->spec.method));
    if (cut->again == MUSLIN_CUT_AGAIN_ONCE && cut->cut_width != cut->cut_height)
        add(line, cut->hand == MUSLIN_HAND_MIRRORED ? ", from the upper left to the lower right, right side up"
                                 : ", from the lower left to the upper right, right side up");
    if (cut->source == MUSLIN_CUT_SOURCE_SETTING && cut->spare > 0)
        add(line, ", %" PRId64 " of them spare", cut->spare);
    if (cut->source == MUSLIN_CUT_SOURCE_TEMPLATE)
        add(line, ", each from a rectangle so large, by its template%s",
            cut->hand == MUSLIN_HAND_MIRRORED ? " turned over" : "");
}

/* From point to point, and a hand's breadth to hold. */
static void add_mitred(struct line *line, const struct worked *worked, size_t cut)
{
    const struct muslin_solution_cut *row = &worked->cuts[cut];
    int64_t strips = 0;
    char text[WORD_ROOM];
    for (size_t i = 0; i < worked->cuts_count; i++)
        strips += worked->piece[i] == worked->piece[cut] ? worked->cuts[i].count : 0;
    add(line, "Cut %" PRId64 " strips at %s", strips,
        measured_by(worked, cut_length(worked, cut), row->cut_height, text));
    add(line, ", cut generous (from point to point a strip needs %s, cut); the ends are trimmed when the corners are "
        "%s", measured(worked, row->cut_width, text), spelt(worked, MITRED));
}

/* How long the last strips of a set must be that is sewn for one or two segments. */
static void add_short_strips(struct line *line, const struct worked *worked, size_t cut)
{
    char letter[16];
    char text[WORD_ROOM];
    muslin_len length;
    for (size_t i = 0; i < worked->sets_count; i++)
        if (is_cut_for(worked, cut, worked->sets[i].node) && short_set(worked, &worked->sets[i], &length) > 0)
            add(line, "; for the last set of %s strips %s long are enough",
                letter_of(worked, worked->sets[i].node, letter), at_least(worked, length, text));
}

static bool is_taken_for_it(const struct muslin_solution_cut *a, const struct muslin_solution_cut *b)
{
    return a->fabric == b->fabric && a->shape == b->shape && a->again != b->again && a->cut_width == b->cut_width &&
           a->cut_height == b->cut_height && a->source != MUSLIN_CUT_SOURCE_SET_STRIP &&
           b->source != MUSLIN_CUT_SOURCE_SET_STRIP;
}

/* Pieces of one size of which some are cut again and some are not. */
static void add_alike(struct line *line, const struct worked *worked, size_t cut)
{
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (i != cut && is_taken_for_it(&worked->cuts[cut], &worked->cuts[i]))
            add(line, "; as large as [%d]: keep them apart", worked->piece[i]);
}

static void write_cut(struct document *document, const struct worked *worked, size_t cut)
{
    const struct muslin_solution_cut *row = &worked->cuts[cut];
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    char lead[16];
    snprintf(lead, sizeof lead, "[%d]", worked->piece[cut]);
    if (row->source == MUSLIN_CUT_SOURCE_MITRED)
        add_mitred(&line, worked, cut);
    else if (row->source == MUSLIN_CUT_SOURCE_SET_STRIP && cloth_of(worked->design, row->fabric)->strip_cut > 0)
        add(&line, "Take %" PRId64 " strip%s, %s wide as bought", row->count, plural(row->count),
            measured(worked, row->cut_height, text));
    else if (row->source == MUSLIN_CUT_SOURCE_SET_STRIP)
        add(&line, "Cut %" PRId64 " strip%s, width of %s by %s", row->count, plural(row->count),
            word(worked, WORD_FABRIC), measured(worked, row->cut_height, text));
    else if (row->pitch > 0)
        add_strip_shape(&line, worked, row);
    else
        add(&line, "Cut %" PRId64 "%s at %s", row->count, shape_name(row),
            measured_by(worked, row->cut_width, row->cut_height, text));
    add_again(&line, worked, row);
    add_use(&line, worked, cut);
    add_alike(&line, worked, cut);
    if (row->source == MUSLIN_CUT_SOURCE_SET_STRIP)
        add_short_strips(&line, worked, cut);
    put(document, ITEM_POINT, is_joined(worked, cut) ? 1 : 0, lead, &line);
}

/* What the library warns of, once for all cuts of a fabric. */
static void write_warnings(struct document *document, const struct worked *worked, muslin_id fabric)
{
    const uint32_t told = MUSLIN_WARN_LONGER_THAN_WIDTH | MUSLIN_WARN_BIAS_EDGE; /* elsewhere */
    for (uint32_t bit = 1; bit != 0; bit <<= 1) {
        struct line line = { NULL, 0, 0 };
        int last = 0;
        for (size_t i = 0; i < worked->cuts_count && (bit & told) == 0; i++) {
            const size_t cut = worked->order[i];
            if (worked->cuts[cut].fabric != fabric || (worked->cuts[cut].warnings & bit) == 0 ||
                worked->piece[cut] == last)
                continue;
            last = worked->piece[cut];
            add(&line, "%s[%d]", line.used > 0 ? ", " : "", last);
        }
        if (line.used == 0)
            continue;
        add(&line, ": %s", muslin_warning_sentence(bit));
        put(document, ITEM_CAUTION, 0, NULL, &line);
    }
}

/* ---- binding and sleeve ------------------------------------------------------------------------------------------ */

static bool has_cuts(const struct worked *worked, muslin_id fabric)
{
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (worked->cuts[i].fabric == fabric)
            return true;
    return false;
}

static void write_extra(struct document *document, const struct worked *worked, size_t extra)
{
    const struct muslin_extra_cut_spec *cut = &worked->extras[extra];
    char text[WORD_ROOM];
    char wide[WORD_ROOM];
    muslin_len together;
    if (laid_for(worked, (int64_t)(worked->cuts_count + extra)) == LAID_BINDING) {
        const int64_t strips = count_binding_strips(worked, &together);
        say(document, ITEM_POINT, 0, NULL, "Binding: cut %" PRId64 " strip%s %s wide, %s together.", strips,
            plural(strips), measured(worked, cut->cut_length, wide), measured(worked, together, text));
    } else {
        say(document, ITEM_POINT, 0, NULL, "Hanging sleeve: cut %" PRId64 " piece%s at %s%s.", cut->count,
            plural(cut->count), measured_by(worked, cut->cut_width, cut->cut_length, text),
            cut->kind == MUSLIN_BLANK_JOINED ? ", joined from strips" : "");
    }
}

static void write_extras(struct document *document, const struct worked *worked, muslin_id fabric)
{
    for (size_t i = 0; i < worked->extras_count; i++)
        if (worked->extras[i].fabric == fabric)
            write_extra(document, worked, i);
}

/* Of what the top has nothing of. */
static void write_other_fabrics(struct document *document, const struct worked *worked)
{
    for (size_t i = 0; i < worked->bill_count; i++) {
        if (has_cuts(worked, worked->bill[i].fabric))
            continue;
        write_fabric_heading(document, worked, worked->bill[i].fabric);
        write_extras(document, worked, worked->bill[i].fabric);
    }
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

static bool has_direction(const struct worked *worked)
{
    for (size_t i = 0; i < worked->design->cloths_used; i++)
        if (worked->design->cloths[i].print != MUSLIN_PRINT_NONE)
            return true;
    return false;
}

void write_cuts(struct document *document, const struct worked *worked)
{
    say(document, ITEM_HEADING, 0, NULL, "Cutting list");
    say(document, ITEM_SAY, 0, NULL, "All sizes here are cut sizes, seam allowances included. Of each %s the "
        "longest comes first.", word(worked, WORD_FABRIC));
    if (has_direction(worked))
        say(document, ITEM_SAY, 0, NULL, "Of a print with a direction the first size lies across the print, the second "
            "along it.");
    for (size_t i = 0; i < worked->cuts_count; i++) {
        const size_t cut = worked->order[i];
        const size_t before = i == 0 ? cut : worked->order[i - 1];
        if (i == 0 || worked->cuts[cut].fabric != worked->cuts[before].fabric)
            write_fabric_heading(document, worked, worked->cuts[cut].fabric);
        if (is_joined(worked, cut) && (i == 0 || !same_strips(worked, before, cut)))
            write_joining(document, worked, cut);
        if (i == 0 || worked->piece[cut] != worked->piece[before])
            write_cut(document, worked, cut);
        if (i + 1 < worked->cuts_count && worked->cuts[worked->order[i + 1]].fabric == worked->cuts[cut].fabric)
            continue;
        write_extras(document, worked, worked->cuts[cut].fabric);
        write_warnings(document, worked, worked->cuts[cut].fabric);
    }
    write_other_fabrics(document, worked);
}
