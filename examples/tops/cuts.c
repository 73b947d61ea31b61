/* cuts.c - the cut list: every piece with its number, how many, what size, how it is cut again and what it is for.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"

/* ---- what it is for --------------------------------------------------------------------------------------------- */

static int goes_into(const struct sheet *sheet, size_t step, const muslin_id *ids, size_t count)
{
    const struct muslin_sewing_row *row = &sheet->steps[step];
    const struct feeds *feeds = &sheet->feeds[step];
    for (size_t i = 0; i < count; i++) {
        if (row->node == ids[i] && row->kind != MUSLIN_SEWING_SEGMENTS)
            return 1;
        for (size_t k = 0; k < feeds->count; k++)
            if (feeds->rows[k].step < 0 && feeds->rows[k].node == ids[i])
                return 1;
    }
    return 0;
}

/* "for C and E": the letters of all that it goes into. */
static void add_use(struct line *line, const struct sheet *sheet, size_t cut)
{
    char text[16];
    int is_border = 0;
    size_t ids_count;
    size_t found = 0;
    must(muslin_solution_cut_nodes(sheet->solution, (int64_t)cut, NULL, 0, &ids_count, NULL), NULL);
    muslin_id *ids = calloc(ids_count + 1, sizeof *ids);
    size_t *steps = calloc(sheet->steps_count + 1, sizeof *steps);
    if (ids == NULL || steps == NULL)
        must(MUSLIN_ERR_NO_MEMORY, NULL);
    must(muslin_solution_cut_nodes(sheet->solution, (int64_t)cut, ids, ids_count, &ids_count, NULL), NULL);
    for (size_t i = 0; i < sheet->steps_count; i++)
        if (goes_into(sheet, i, ids, ids_count))
            steps[found++] = i;
    for (size_t i = 0; i < found; i++) {
        const struct named *named = named_of(sheet, sheet->steps[steps[i]].node);
        is_border |= named != NULL && named->side != 0 && named->log == 0;
        add(line, "%s%s", i == 0 ? ", for " : comma(i, found), letter(sheet, sheet->steps[steps[i]].node, text));
    }
    if (found == 1) {
        add(line, " (");
        add_name(line, sheet, sheet->steps[steps[0]].node);
        add(line, ")");
    }
    if (is_border && sheet->cuts[cut].source == MUSLIN_CUT_PATCH)
        add(line, "; cut after the top is measured through the middle, as long as it is there");
    free(steps);
    free(ids);
}

/* ---- strips longer than the cloth is wide ----------------------------------------------------------------------- */

int is_too_long(const struct muslin_cut *cut)
{
    return cut->source == MUSLIN_CUT_PATCH && muslin_length_compare(cut->cut_width, USABLE) > 0;
}

/* All of one fabric and one width are said once. */
static int same_strips(const struct muslin_cut *a, const struct muslin_cut *b)
{
    return is_too_long(a) && is_too_long(b) && a->fabric == b->fabric && a->cut_height == b->cut_height;
}

static void print_joining(const struct muslin_cut *cut)
{
    struct line line = { .used = 0 };
    char text[WORD];
    add(&line, "The cloth is not as wide as the next pieces are long: join each of them end to end from strips %s "
        "wide, with straight 1/4 in seams pressed open. The strips are laid out below; leave the shorter ones longer "
        "where their strip has cloth free, and trim what is joined when the top is measured:",
        inches(cut->cut_height, text));
    print_line(&line, 4, 5);
}

/* ---- rows -------------------------------------------------------------------------------------------------------- */

static const char *shape_name(const struct muslin_cut *cut)
{
    static const char *const names[] = { "", "", " triangles", " diamonds", " hexagons", " trapezoids", " wedges",
                                         " octagons", " slices" };
    if (cut->shape == MUSLIN_CUT_RECTANGLE && cut->cut_width == cut->cut_height)
        return cut->count == 1 ? " square" : " squares";
    return names[cut->shape];
}

/* Shapes from strips: how high the strip is and how far apart the cuts are. */
static void add_strip_shape(struct line *line, const struct muslin_cut *cut)
{
    char text[WORD];
    const muslin_len lengths[] = { cut->cut_width, cut->pitch };
    const int64_t counts[] = { 1, cut->count - 1 };
    muslin_len along;
    must(muslin_length_dot(lengths, counts, 2, &along), NULL);
    int one = muslin_length_compare(along, USABLE) <= 0;
    add(line, "Cut %s, width of fabric by %s, and from %s", one ? "1 strip" : "strips", inches(cut->cut_height, text),
        one ? "it" : "them");
    add(line, " %" PRId64 "%s: cut one end off at %d degrees", cut->count, shape_name(cut), (int)cut->angle);
    if (cut->shape == MUSLIN_CUT_DIAMONDS)
        add(line, ", then cut parallel to that, %s apart, measured square to the cut",
            inches(cut->cut_height, text));
    else
        add(line, ", then go on with the ruler leaning to the one side and to the other in turn, %s wide at the "
            "widest", inches(cut->wide_edge, text));
}

static const char *as_needed(int32_t method)
{
    switch (method) {
    case MUSLIN_METHOD_TWO_AT_A_TIME:
        return ", leave whole: two units come of each pair";
    case MUSLIN_METHOD_FOUR_AT_A_TIME:
        return ", leave whole: four units come of one large and four small squares";
    case MUSLIN_METHOD_EIGHT_AT_A_TIME:
        return ", leave whole: eight units come of each pair";
    default:
        return "";
    }
}

static void add_again(struct line *line, const struct sheet *sheet, const struct muslin_cut *cut)
{
    static const char *const setting[] = { "triangles", "triangles", "corner setting triangles",
                                           "side setting triangles" };
    const struct unit *unit = unit_of(sheet, cut->first_node);
    if (cut->again != MUSLIN_AGAIN_NO)
        add(line, ", cut %s on the diagonal: %" PRId64 " %s", cut->again == MUSLIN_AGAIN_ONCE ? "once" : "twice",
            cut->pieces, cut->source == MUSLIN_CUT_SETTING ? setting[cut->again] : "triangles");
    else if (cut->source == MUSLIN_CUT_UNIT && unit != NULL)
        add(line, "%s", as_needed(unit->spec.method));
    if (cut->source == MUSLIN_CUT_SETTING && cut->spare > 0)
        add(line, ", %" PRId64 " of them spare", cut->spare);
}

/* The exact length from point to point, with two inches to hold, up to a whole inch. */
static void add_mitred(struct line *line, const struct sheet *sheet, size_t cut)
{
    const struct muslin_cut *row = &sheet->cuts[cut];
    struct muslin_rounding_spec whole = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded length = { .size = (uint32_t)sizeof length };
    const muslin_len lengths[] = { row->cut_width, 2 * INCH };
    muslin_len generous;
    int64_t strips = 0;
    char text[WORD];
    for (size_t i = cut; i < sheet->cuts_count && sheet->piece[i] == sheet->piece[cut]; i++)
        strips += sheet->cuts[i].count;
    whole.grid = INCH;
    whole.direction = MUSLIN_ROUND_UP;
    must(muslin_length_sum(lengths, 2, &generous), NULL);
    must(muslin_length_snap(generous, &whole, &length), NULL);
    add(line, "Cut %" PRId64 " strips at %s", strips, inches_by(length.value, row->cut_height, text));
    add(line, ", cut generous (from point to point a strip needs %s, cut); the ends are trimmed when the corners are "
        "mitred", inches(row->cut_width, text));
}

static void print_cut(const struct sheet *sheet, size_t cut)
{
    const struct muslin_cut *row = &sheet->cuts[cut];
    struct line line = { .used = 0 };
    char text[WORD];
    add(&line, "[%d] ", sheet->piece[cut]);
    if (row->source == MUSLIN_CUT_MITRED)
        add_mitred(&line, sheet, cut);
    else if (row->source == MUSLIN_CUT_SET_STRIP)
        add(&line, "Cut %" PRId64 " strip%s, width of fabric (40 in usable) by %s", row->count,
            row->count == 1 ? "" : "s", inches(row->cut_height, text));
    else if (row->pitch > 0)
        add_strip_shape(&line, row);
    else
        add(&line, "Cut %" PRId64 "%s at %s", row->count, shape_name(row),
            inches_by(row->cut_width, row->cut_height, text));
    add_again(&line, sheet, row);
    add_use(&line, sheet, cut);
    print_line(&line, 4 + 5 * is_too_long(row), 5);
}

void print_cuts(const struct sheet *sheet)
{
    printf("\nCUT\n");
    for (size_t i = 0; i < sheet->cuts_count; i++) {
        size_t cut = sheet->order[i];
        const struct muslin_cut *row = &sheet->cuts[cut];
        const struct muslin_cut *before = i == 0 ? NULL : &sheet->cuts[sheet->order[i - 1]];
        if (before == NULL || row->fabric != before->fabric)
            printf("  %s\n", fabric_name(sheet, row->fabric));
        if (is_too_long(row) && (before == NULL || !same_strips(before, row)))
            print_joining(row);
        if (before == NULL || sheet->piece[cut] != sheet->piece[sheet->order[i - 1]])
            print_cut(sheet, cut);
    }
}
