/* write_shapes.c - steps of the less usual parts: own shapes, trimming, pinwheels, 60 degree rows, set-in strips.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

/* The pieces of the cut list that go into a node, "4 of [3] night": of those that are no nodes. */
static void add_pieces(struct line *line, const struct worked *worked, muslin_id node, int32_t source)
{
    size_t found = 0;
    for (size_t i = 0; i < worked->cuts_count; i++) {
        const size_t cut = worked->order[i];
        const bool is_first = i == 0 || worked->piece[worked->order[i - 1]] != worked->piece[cut];
        if (worked->cuts[cut].source == source && is_first && is_cut_for(worked, cut, node))
            add(line, "%s[%d] %s", found++ > 0 ? ", " : "", worked->piece[cut],
                fabric_name(worked, worked->cuts[cut].fabric));
    }
}

void write_shape(struct document *document, const struct worked *worked, size_t step)
{
    struct line line = { NULL, 0, 0 };
    add(&line, "Its pieces, each cut by its template: ");
    add_pieces(&line, worked, worked->steps[step].node, MUSLIN_CUT_SOURCE_TEMPLATE);
    add(&line, ". Sew them together as drawn, short seams before long ones, edge to edge with the corners of the seam "
        "lines matched.");
    put(document, ITEM_POINT, 0, NULL, &line);
    say(document, ITEM_POINT, 0, NULL, "Press as the arrows on the drawing show.");
}

/* ---- trimmed ----------------------------------------------------------------------------------------------------- */

static void add_trim(struct line *line, const struct worked *worked, muslin_id measure, const char *side)
{
    char text[WORD_ROOM];
    muslin_len value;
    if (measure == 0)
        return;
    must(muslin_solution_value(worked->solution, measure, &value, NULL));
    if (value > 0)
        add(line, "%s%s at the %s", line->used > 0 ? ", " : "Cut off ", measured(worked, value, text), side);
}

void write_trimming(struct document *document, const struct worked *worked, size_t step)
{
    struct line line = { NULL, 0, 0 };
    struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    size_t count;
    muslin_id *of = children_of(worked, worked->steps[step].node, &count);
    struct lying part = lying_at(worked, worked->steps[step].node, 0, of[0]);
    must(muslin_quilt_read_trim(worked->design->quilt, worked->steps[step].node, &spec, NULL));
    add_trim(&line, worked, spec.left, "left");
    add_trim(&line, worked, spec.right, "right");
    add_trim(&line, worked, spec.top, "top");
    add_trim(&line, worked, spec.bottom, "bottom");
    add(&line, "%sof ", line.used > 0 ? " " : "Nothing is cut off ");
    add_part(&line, worked, &part);
    add(&line, ", square to its seams.");
    put(document, ITEM_POINT, 0, NULL, &line);
    free(of);
}

/* ---- round a centre ---------------------------------------------------------------------------------------------- */

void write_pinwheel(struct document *document, const struct worked *worked, size_t step)
{
    static const char *const places[] = { "Middle piece", "top", "right", "bottom", "left" };
    const muslin_id node = worked->steps[step].node;
    struct line line = { NULL, 0, 0 };
    size_t count;
    muslin_id *children = children_of(worked, node, &count);
    for (size_t i = 0; i < count && i < 5; i++) {
        struct lying part = lying_at(worked, node, i, children[i]);
        add(&line, "%s%s: ", i > 0 ? "; " : "", places[i]);
        add_part(&line, worked, &part);
    }
    add(&line, ".");
    put(document, ITEM_POINT, 0, NULL, &line);
    free(children);
    say(document, ITEM_POINT, 0, NULL, "A seam that is sewn in part comes first: sew the top piece to the middle "
        "piece, right ends even, from there only about halfway. Then sew the right piece to the middle piece and the "
        "top, the bottom piece to the middle piece and the right, the left piece to the middle piece and the bottom. "
        "Last finish the first seam, over the middle piece and the left.");
    say(document, ITEM_POINT, 0, NULL, "Press as the arrows on the drawing show.");
}

/* "a strip [7] to the left and the right side and a strip [8] to the top and the bottom", or "to each side". */
static void add_strips(struct line *line, const struct worked *worked, muslin_id node)
{
    static const char *const where[] = { "each side", "the left and the right side", "the top and the bottom" };
    int told = 0;
    for (size_t i = 0; i < worked->cuts_count; i++) {
        const size_t cut = worked->order[i];
        if (worked->cuts[cut].source != MUSLIN_CUT_SOURCE_MITRED || worked->piece[cut] == told ||
            !is_cut_for(worked, cut, node))
            continue;
        add(line, "%sa strip [%d] to %s", told == 0 ? "" : " and ", worked->piece[cut],
            where[mitred_sides(worked, cut, node)]);
        told = worked->piece[cut];
    }
}

void write_set_in(struct document *document, const struct worked *worked, size_t step)
{
    const muslin_id node = worked->steps[step].node;
    struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    size_t count;
    muslin_id seam;
    muslin_len allowance;
    muslin_id *centre = children_of(worked, node, &count);
    struct lying part = lying_at(worked, node, 0, centre[0]);
    must(muslin_quilt_read_set_in(worked->design->quilt, node, &spec, NULL));
    must(muslin_quilt_seam(worked->design->quilt, &seam, NULL, NULL));
    must(muslin_solution_value(worked->solution, seam, &allowance, NULL));
    const bool all_round = spec.left_width != 0 && spec.right_width != 0 && spec.top_width != 0 &&
                           spec.bottom_width != 0;
    measured(worked, allowance, text);
    add(&line, "In the middle: ");
    add_part(&line, worked, &part);
    add(&line, ". Sew ");
    add_strips(&line, worked, node);
    add(&line, all_round ? ", middle on middle, so that it stands out alike at both ends: begin and stop %s inside the "
                           "corners of the middle part and secure the stitches."
                         : ", where there is one on the drawing: where two strips meet, begin or stop %s inside the "
                           "corner of the middle part and secure the stitches, and let both stand out beyond it.",
        text);
    add(&line, " Then %s each corner: fold it on the diagonal, strips on each other; draw a line at 45 degrees from "
        "the last stitch to the outer edge; sew on it from the inside outwards; trim %s beyond the seam.",
        spelt(worked, MITRE), text);
    put(document, ITEM_POINT, 0, NULL, &line);
    write_mitred_pressing(document, worked, node);
    free(centre);
}

/* ---- 60 degree rows ---------------------------------------------------------------------------------------------- */

static const char *sixty_name(int64_t cells)
{
    return cells == 1 ? "triangle" : cells == 2 ? "diamond" : "half-hexagon";
}

static void write_sixty_row(struct document *document, const struct worked *worked,
                            const struct muslin_quilt_sixty_piece_spec *pieces, size_t count, int64_t row)
{
    struct line line = { NULL, 0, 0 };
    char lead[32];
    add(&line, "half-triangle");
    for (size_t i = 0, next; i < count; i = next) {
        for (next = i + 1; next < count && pieces[next].fabric == pieces[i].fabric &&
                           pieces[next].cells == pieces[i].cells; next++) {
        }
        add(&line, "; ");
        if (next - i > 1)
            add(&line, "%zu times ", next - i);
        add(&line, "%s, a %s", fabric_name(worked, pieces[i].fabric), sixty_name(pieces[i].cells));
    }
    add(&line, "; half-triangle.");
    snprintf(lead, sizeof lead, "Row %" PRId64 ":", row);
    put(document, ITEM_POINT, 1, lead, &line);
}

void write_sixty(struct document *document, const struct worked *worked, size_t step)
{
    const muslin_id node = worked->steps[step].node;
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct line line = { NULL, 0, 0 };
    size_t count;
    must(muslin_quilt_read_sixty(worked->design->quilt, node, &spec, NULL));
    must(muslin_quilt_read_sixty_pieces(worked->design->quilt, node, NULL, 0, 0, &count, NULL));
    struct muslin_quilt_sixty_piece_spec *pieces = rows_for(count, sizeof *pieces);
    must(muslin_quilt_read_sixty_pieces(worked->design->quilt, node, pieces, sizeof *pieces, count, &count, NULL));
    add(&line, "Pieces: ");
    add_pieces(&line, worked, node, MUSLIN_CUT_SOURCE_SIXTY);
    add(&line, ". Each row from the left, a half-triangle at either end; they stand on their sides and on their "
        "points in turn. The first one of row 1 stands on its %s; the rows take turns.",
        spec.first == 1 ? "side" : "point");
    put(document, ITEM_POINT, 0, NULL, &line);
    size_t first = 0;
    for (int64_t row = 1; row <= spec.rows; row++) {
        size_t last = first;
        for (int64_t cells = 0; last < count && cells < spec.cells; last++)
            cells += pieces[last].cells;
        write_sixty_row(document, worked, pieces + first, last - first, row);
        first = last;
    }
    free(pieces);
    say(document, ITEM_POINT, 0, NULL, "Sew the pieces of each row, then the rows to each other, points on seams. "
        "Press as the arrows on the drawing show; the slanted edges stretch.");
}
