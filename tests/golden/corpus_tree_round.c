/* corpus_tree_round.c - small trees, continued: what is sewn round a centre, sashes, fields on point, 60 degree rows.
 *
 * SPDX-License-Identifier: MIT */
#include "corpus_tree.h"

/* Four turned copies of one rectangle round a square, which fit; or five nodes as they come. */
void tree_pinwheel(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_pinwheel_spec, spec);
    muslin_id id = -77;
    if (draw_rarely(g, 3)) {
        spec.centre = draw_id(g, &tree->nodes);
        spec.top = draw_id(g, &tree->nodes);
        spec.right = draw_id(g, &tree->nodes);
        spec.bottom = draw_id(g, &tree->nodes);
        spec.left = draw_id(g, &tree->nodes);
    } else {
        muslin_len narrow = draw_between(g, 1, 3) * MUSLIN_TICKS_PER_INCH;
        muslin_len middle = draw_between(g, 1, 3) * MUSLIN_TICKS_PER_INCH;
        muslin_len wide = narrow + middle + (draw_rarely(g, 4) ? draw_between(g, -200, 200) : 0);
        muslin_id side = tree_measure(g, tree, &middle);
        muslin_id width = tree_measure(g, tree, &wide);
        muslin_id height = tree_measure(g, tree, &narrow);
        spec.centre = tree_patch_of(g, tree, side, side);
        spec.top = tree_patch_of(g, tree, width, height);
        spec.right = tree_turned(g, tree, spec.top, 1);
        spec.bottom = tree_turned(g, tree, spec.top, 2);
        spec.left = tree_turned(g, tree, spec.top, 3);
    }
    spec.flags = draw_flags(g, 0);
    told_id(g, &tree->nodes, muslin_quilt_pinwheel(draw_quilt(g, tree), &spec, &id, ask(g)), &id);
}

/* A side with its strip, or without; rarely with half of it. */
static void draw_side(struct golden *g, struct tree *tree, muslin_id *width, muslin_id *fabric)
{
    int there = !draw_rarely(g, 3);
    *width = there ? draw_id(g, &tree->measures) : 0;
    *fabric = there != draw_rarely(g, 90) ? draw_id(g, &tree->fabrics) : 0;
}

void tree_set_in(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_set_in_spec, spec);
    muslin_id widths[4];
    muslin_id fabrics[4];
    muslin_id id = -77;
    for (size_t i = 0; i < 4; i++)
        draw_side(g, tree, &widths[i], &fabrics[i]);
    spec.flags = draw_flags(g, 0);
    spec.centre = draw_id(g, &tree->nodes);
    spec.left_width = widths[0];
    spec.right_width = widths[1];
    spec.top_width = widths[2];
    spec.bottom_width = widths[3];
    spec.left_fabric = fabrics[0];
    spec.right_fabric = fabrics[1];
    spec.top_fabric = fabrics[2];
    spec.bottom_fabric = fabrics[3];
    told_id(g, &tree->nodes, muslin_quilt_set_in(draw_quilt(g, tree), &spec, &id, ask(g)), &id);
}

void tree_logs(struct golden *g, struct tree *tree)
{
    enum { LOGS = 9 };
    struct muslin_quilt_log_spec logs[LOGS];
    muslin_id id = -77;
    size_t n = (size_t)draw_below(g, LOGS + 1);
    int32_t first = draw_choice(g, MUSLIN_SIDE_LEFT, MUSLIN_SIDE_BOTTOM);
    for (int32_t i = 0; i < LOGS; i++) {
        SPEC(muslin_quilt_log_spec, log);
        log.flags = draw_flags(g, 0);
        log.fabric = draw_id(g, &tree->fabrics);
        log.width = draw_id(g, &tree->measures);
        log.side = draw_rarely(g, 4) ? draw_choice(g, MUSLIN_SIDE_LEFT, MUSLIN_SIDE_BOTTOM) : (first + i) % 4 + 1;
        logs[i] = log;
    }
    muslin_id centre = draw_id(g, &tree->nodes);
    told_id(g, &tree->nodes, muslin_quilt_logs(draw_quilt(g, tree), centre, logs, sizeof logs[0], n, &id, ask(g)), &id);
}

/* Sides as long as the centre with corners that suit them, or what comes. */
void tree_surround(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_surround_spec, spec);
    muslin_id id = -77;
    muslin_id corner = 0;
    spec.centre = draw_id(g, &tree->nodes);
    if (draw_rarely(g, 4)) {
        spec.left = draw_id(g, &tree->nodes);
        spec.right = draw_id(g, &tree->nodes);
        spec.top = draw_id(g, &tree->nodes);
        spec.bottom = draw_id(g, &tree->nodes);
        corner = draw_id(g, &tree->nodes);
    } else {
        muslin_id border = draw_id(g, &tree->measures);
        muslin_id width = tree_extent(g, tree, spec.centre, MUSLIN_AXIS_ACROSS);
        muslin_id height = tree_extent(g, tree, spec.centre, MUSLIN_AXIS_DOWN);
        spec.left = tree_patch_of(g, tree, border, height);
        spec.right = tree_patch_of(g, tree, border, height);
        spec.top = tree_patch_of(g, tree, width, border);
        spec.bottom = tree_patch_of(g, tree, width, border);
        corner = tree_patch_of(g, tree, border, border);
    }
    spec.flags = draw_flags(g, 0);
    spec.top_left = corner;
    spec.top_right = corner;
    spec.bottom_left = draw_rarely(g, 2) ? draw_id(g, &tree->nodes) : corner;
    spec.bottom_right = corner;
    told_id(g, &tree->nodes, muslin_quilt_surround(draw_quilt(g, tree), &spec, &id, ask(g)), &id);
}

/* ---- blocks in a field ----------------------------------------------------------------------------------------- */

enum { BLOCKS = 18 };

/* All the same, two in turn, or any. */
static void draw_blocks(struct golden *g, const struct tree *tree, muslin_id *blocks)
{
    int64_t different = draw_between(g, 1, 3);
    muslin_id two[2];
    two[0] = draw_id(g, &tree->nodes);
    two[1] = draw_id(g, &tree->nodes);
    for (int32_t i = 0; i < BLOCKS; i++) {
        blocks[i] = two[different == 1 ? 0 : i % 2];
        if (different == 3)
            blocks[i] = draw_id(g, &tree->nodes);
    }
}

void tree_sashed(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_sashed_spec, spec);
    muslin_id blocks[BLOCKS];
    muslin_id id = -77;
    draw_blocks(g, tree, blocks);
    spec.flags = draw_flags(g, 0);
    spec.columns = draw_between(g, 1, 3);
    spec.rows = draw_between(g, 1, 3);
    size_t n = (size_t)(spec.columns * spec.rows);
    if (draw_rarely(g, 60))
        spec.columns = draw_count(g, 4);
    spec.sash = draw_id(g, &tree->measures);
    spec.sash_fabric = draw_id(g, &tree->fabrics);
    spec.cornerstone = draw_rarely(g, 2) ? draw_id(g, &tree->fabrics) : 0;
    spec.flags |= spec.cornerstone != 0 ? MUSLIN_QUILT_SASHED_CORNERSTONES : 0;
    spec.flags |= draw_choice(g, 0, 1) != 0 ? MUSLIN_QUILT_SASHED_FRAME : 0;
    told_id(g, &tree->nodes, muslin_quilt_sashed(draw_quilt(g, tree), &spec, blocks, n, &id, ask(g)), &id);
}

void tree_diagonal(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_diagonal_spec, spec);
    muslin_id blocks[BLOCKS];
    muslin_id id = -77;
    draw_blocks(g, tree, blocks);
    spec.flags = draw_flags(g, 0);
    spec.columns = draw_between(g, 1, 3);
    spec.rows = draw_between(g, 1, 4);
    size_t n = (size_t)(spec.columns * spec.rows + (spec.columns - 1) * (spec.rows - 1));
    if (draw_rarely(g, 60))
        spec.rows = draw_count(g, 4);
    spec.side_fabric = draw_id(g, &tree->fabrics);
    spec.corner_fabric = draw_id(g, &tree->fabrics);
    spec.set_off = draw_id_rarely(g, &tree->measures, 3);
    told_id(g, &tree->nodes, muslin_quilt_diagonal(draw_quilt(g, tree), &spec, blocks, n, &id, ask(g)), &id);
}

void tree_sixty(struct golden *g, struct tree *tree)
{
    enum { PIECES = 24 };
    SPEC(muslin_quilt_sixty_spec, spec);
    struct muslin_quilt_sixty_piece_spec pieces[PIECES];
    muslin_id id = -77;
    size_t n = 0;
    spec.flags = draw_flags(g, 0);
    spec.cells = draw_between(g, 1, 6);
    spec.rows = draw_between(g, 1, 4);
    for (int64_t left = spec.cells * spec.rows, row = spec.cells; left > 0; n++) {
        SPEC(muslin_quilt_sixty_piece_spec, piece);
        piece.flags = draw_flags(g, 0);
        piece.fabric = draw_id(g, &tree->fabrics);
        piece.cells = draw_between(g, 1, 3);
        if (piece.cells > row && !draw_rarely(g, 90))
            piece.cells = row;
        left -= piece.cells;
        row = row > piece.cells ? row - piece.cells : spec.cells;
        pieces[n] = piece;
    }
    if (draw_rarely(g, 60))
        spec.cells = draw_count(g, 6);
    spec.height = draw_id(g, &tree->measures);
    spec.end_fabric = draw_id(g, &tree->fabrics);
    spec.first = draw_choice(g, 1, 2);
    told_id(g, &tree->nodes, muslin_quilt_sixty(draw_quilt(g, tree), &spec, pieces, sizeof pieces[0], n, &id, ask(g)),
            &id);
}
