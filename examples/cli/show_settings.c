/* show_settings.c - blocks with sashes between them, and blocks on point, as one works them.
 *
 * SPDX-License-Identifier: MIT */
#include <muslin/muslin.h>
#include <stdbool.h>

#include "look.h"
#include "sheet.h"

static json_int_t count_of(json_t *object, const char *member)
{
    return json_integer_value(json_object_get(object, member));
}

static muslin_len ticks_of(json_t *object, const char *member)
{
    return json_integer_value(part(object, member, "ticks"));
}

/* ---- sashing ---------------------------------------------------------------------------------------------------- */

/* Cloth said in inches alone is said as a shop sells it too. */
static const char *strips_across(json_t *piece)
{
    return in_yards(piece, "cloth_length")
               ? "Cut {strips:strip} {cut_width} wide across the cloth, {cloth_length} of it."
               : "Cut {strips:strip} {cut_width} wide across the cloth, {cloth_length} of it ({cloth_to_buy} in the "
                 "shop).";
}

static void show_sash_strips(struct sheet *sheet, json_t *piece, bool long_sash)
{
    sheet_under(sheet, piece, strips_across(piece));
    if (count_of(piece, "from_each_strip") == 0) {
        sheet_under(sheet, piece, "A sash is longer than a strip: join the strips end to end with {joins:straight "
                                  "seam}, and do not cut to length yet.");
        return;
    }
    sheet_under(sheet, piece, "A strip gives {from_each_strip}; {spare_pieces} to spare. The cloth may be "
                              "{cloth_may_be_narrower_by} narrower before a strip gives one fewer.");
    if (long_sash)
        sheet_under(sheet, piece, "Do not cut them to length yet.");
}

static void show_sash_piece(struct sheet *sheet, json_t *piece, bool cornerstones)
{
    bool across = says(piece, "kind", "horizontal sash");
    if (says(piece, "kind", "cornerstone"))
        sheet_point(sheet, piece, "{count:cornerstone}, cut {cut_width} by {cut_length}.");
    else if (across)
        sheet_point(sheet, piece, "{count} horizontal sashes, above and below the rows: cut {cut_width} by "
                                  "{cut_length}.");
    else
        sheet_point(sheet, piece, "{count} vertical sashes, beside the blocks of each row: cut {cut_width} by "
                                  "{cut_length}.");
    show_sash_strips(sheet, piece, across && !cornerstones);
}

void show_sashing(struct sheet *sheet, json_t *answer)
{
    json_t *pieces = json_object_get(answer, "pieces");
    bool cornerstones = json_is_true(json_object_get(answer, "cornerstones"));
    sheet_say(sheet, answer, "{blocks:block} with sashes make a top {finished_width} by {finished_length} finished "
                             "({unfinished_width} by {unfinished_length} unfinished). From cloth "
                             "{cloth_usable_width} wide without its selvages (usable):");
    sheet_gap(sheet);
    sheet_point(sheet, answer, "Make one block first and measure it: it should be {block_unfinished_width} by "
                               "{block_unfinished_height} unfinished. Sashes are cut to the blocks you have.");
    for (size_t i = 0; i < json_array_size(pieces); i++)
        show_sash_piece(sheet, json_array_get(pieces, i), cornerstones);
    show_nothing_allowed(sheet);
    if (cornerstones)
        sheet_point(sheet, answer, "Sew rows of blocks and vertical sashes, and rows of cornerstones and horizontal "
                                   "sashes; press all seams towards the sashes, so that they nest where rows meet.");
    else
        sheet_point(sheet, answer, "Sew rows of blocks and vertical sashes, and press towards the sashes. Measure all "
                                   "rows, and only now cut the horizontal sashes to what the rows measure on average; "
                                   "the length above is the arithmetic. Mark the columns on each long sash so that "
                                   "blocks line up across it.");
    show_sentences(sheet, json_object_get(answer, "warnings"));
}

/* ---- on point: cutting ------------------------------------------------------------------------------------------ */

/* Room to trim that one can cut to, and room that one can see. */
enum { ROOM_TO_CUT = MUSLIN_TICKS_PER_INCH / 16, ROOM_TO_SEE = MUSLIN_TICKS_PER_INCH / 128 };

static const char *room_of(json_t *square)
{
    muslin_len room = ticks_of(square, "to_trim_at_the_edge");
    if (json_object_get(square, "smaller_than_need_by") != NULL)
        return "By geometry such a square needs at least {exact_need}: rounded so, it is smaller. Cut it larger.";
    if (room < ROOM_TO_SEE)
        return "By geometry such a square needs at least {exact_need}: nothing is there to trim.";
    if (room < ROOM_TO_CUT)
        return "By geometry such a square needs at least {exact_need}: it is {larger_than_need_by} larger, and only "
               "half of that, {to_trim_at_the_edge}, is there to trim at the edge, practically nothing. Cut and sew "
               "exactly, or add room with --trim.";
    return "By geometry such a square needs at least {exact_need}: it is {larger_than_need_by} larger, and half of "
           "that, {to_trim_at_the_edge}, is there to trim at the edge.";
}

static void show_room(struct sheet *sheet, json_t *square)
{
    json_t *said = bare(square, "exact_need");
    sheet_under(sheet, said, room_of(square));
    json_decref(said);
}

static void show_triangles(struct sheet *sheet, json_t *answer)
{
    json_t *sides = json_object_get(answer, "side_triangles");
    json_t *corners = json_object_get(answer, "corner_triangles");
    if (sides != NULL) {
        sheet_point(sheet, sides, "{count} side triangles: cut {squares_cut_twice:square} {square_cut} on each side "
                                  "and cut each TWICE on the diagonal, into four triangles ({spare_triangles} to "
                                  "spare). The long side, which will lie on the outside, is then on the straight "
                                  "grain.");
        show_room(sheet, sides);
    }
    sheet_point(sheet, corners, "{count} corner triangles: cut {squares_cut_once:square} {square_cut} on each side and "
                                "cut each ONCE on the diagonal, into two triangles. Their two short sides, which will "
                                "lie on the outside, are on the straight grain.");
    show_room(sheet, corners);
    if (sides != NULL)
        sheet_point(sheet, answer, "Do not swap the two cuts: a triangle from the other kind of square would put bias "
                                   "on the edge of the quilt, and the edge would stretch. The sides that are sewn to "
                                   "the blocks are bias: handle them gently, press without pushing.");
}

static void show_half_blocks(struct sheet *sheet, json_t *answer)
{
    if (count_of(answer, "half_blocks") == 0)
        return;
    sheet_point(sheet, answer, "{half_blocks:half-block} at the edges, each from a whole block of its own: lay the "
                               "ruler {half_block_cut_beyond_diagonal} beyond the diagonal, cut there, and keep the "
                               "larger part. One block gives one half, not two.");
}

static void show_sashes(struct sheet *sheet, json_t *answer)
{
    json_t *sashes = json_object_get(answer, "sashes");
    if (count_of(sashes, "count") > 0)
        sheet_point(sheet, sashes, "{count} whole sashes, cut {cut_width} by {cut_length}.");
    if (count_of(sashes, "at_the_edge") > 0)
        sheet_point(sheet, sashes, "{at_the_edge} sashes between a block and a side triangle, cut {cut_width} by "
                                   "{edge_sash_cut_length}: they run to the edge and are trimmed there at 45 degrees, "
                                   "on the bias.");
    if (count_of(sashes, "cornerstones") > 0)
        sheet_point(sheet, sashes, "{cornerstones:whole cornerstone}, cut {cornerstone_cut} square.");
    if (count_of(sashes, "edge_cornerstones") == 0)
        return;
    sheet_point(sheet, sashes, "{edge_cornerstones} half cornerstones at the edge: cut "
                               "{edge_cornerstone_squares_cut_twice:square} {edge_cornerstone_squares.square_cut} on "
                               "each side and cut each TWICE on the diagonal, like the side triangles.");
    show_room(sheet, json_object_get(sashes, "edge_cornerstone_squares"));
}

/* ---- on point: sewing ------------------------------------------------------------------------------------------- */

/* Where half-blocks stand at the edge, no side triangles do. */
static const char *rows_of(json_t *answer)
{
    bool triangles = json_object_get(answer, "side_triangles") != NULL;
    if (says(answer, "layout", "cut"))
        return triangles ? "Sew diagonal rows of blocks, a sash between all of them and at both ends, then a side "
                           "triangle at each end, except where a corner triangle will lie."
                         : "Sew diagonal rows of blocks, a sash between all of them and at both ends, then a "
                           "half-block at each end, except where a corner triangle will lie.";
    if (says(answer, "layout", "outer"))
        return "Lay everything out first. Sew diagonal rows of blocks, a sash between all of them and at both ends.";
    if (says(answer, "layout", "inner"))
        return "Lay everything out first. Sew diagonal rows of blocks, a sash between all of them; at the ends, except "
               "where a corner triangle will lie, a sash that runs to the edge and then a side triangle.";
    return triangles ? "Sew diagonal rows, each with its side triangles at both ends, then the rows to each other, the "
                       "corner triangles last."
                     : "Sew diagonal rows, each with its half-blocks at both ends, then the rows to each other, the "
                       "corner triangles last.";
}

static const char *sash_rows_of(json_t *answer)
{
    if (says(answer, "layout", "cut"))
        return "Between them, and also before the first and after the last row of blocks, diagonal rows of sashes and "
               "cornerstones, a half cornerstone at each end: one short side against the sash, the long side "
               "outwards, in line with the edge of the quilt. The first and the last are one sash and two half "
               "cornerstones each; corner triangles go on them.";
    if (says(answer, "layout", "outer"))
        return "Between them, and also before the first and after the last row of blocks, diagonal rows of sashes and "
               "cornerstones, a cornerstone at each end; the first and the last are one sash and two cornerstones "
               "each. A side triangle's short side is as long as a block and a sash together: sew the two rows it lies "
               "against to each other before it goes on.";
    return "Between them, diagonal rows of sashes and cornerstones, with sashes that run to the edge at the ends.";
}

static void show_sewing(struct sheet *sheet, json_t *answer)
{
    sheet_point(sheet, answer, rows_of(answer));
    if (says(answer, "layout", "plain"))
        return;
    sheet_point(sheet, answer, sash_rows_of(answer));
    sheet_point(sheet, answer, "Press towards the sashes, so that the seams nest; then sew the rows to each other, the "
                               "corner triangles last.");
}

static void show_trimming(struct sheet *sheet, json_t *answer)
{
    if (any(answer, "edges", "set_off"))
        sheet_point(sheet, answer, "Trim the edges straight, {edges.trim_outside} outside the outermost tips: "
                                   "{edges.set_off} of it stays, so that the blocks float, the rest is for the seam.");
    else if (says(answer, "layout", "cut"))
        sheet_point(sheet, answer, "Trim the edges straight, {edges.trim_outside} outside the finished long edge of "
                                   "the half cornerstones, where their seams meet those of the pieces beside them. "
                                   "They are halves already: do not cut through their middles again.");
    else
        sheet_point(sheet, answer, "Trim the edges straight, {edges.trim_outside} outside the outermost tips, for the "
                                   "seam.");
}

void show_on_point(struct sheet *sheet, json_t *answer)
{
    sheet_say(sheet, answer, "{blocks:block} of {block_finished} finished on point: the centre measures "
                             "{finished_width} by {finished_length} finished ({unfinished_width} by "
                             "{unfinished_length} unfinished).");
    sheet_gap(sheet);
    sheet_point(sheet, answer, "Make one block first and measure it: it should be {block_unfinished} square "
                               "unfinished. Sizes follow the block you really get.");
    if (count_of(answer, "alternate_blocks") > 0)
        sheet_point(sheet, answer, "{alternate_blocks:alternate block} between them; plain ones are squares cut "
                                   "{alternate_cut}.");
    show_half_blocks(sheet, answer);
    show_triangles(sheet, answer);
    show_sashes(sheet, answer);
    show_sewing(sheet, answer);
    show_trimming(sheet, answer);
    show_sentences(sheet, json_object_get(answer, "warnings"));
}
