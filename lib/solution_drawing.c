/* solution_drawing.c - going down a tree to one outline after another.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_drawing.h"

/* ---- down the tree ---------------------------------------------------------------------------------------------- */

/* Farther than anything is drawn: positions add up sizes below 2^31 over at most MUSLIN_QUILT_DEPTH_MAX nodes. */
#define NO_END (INT64_C(1) << 60)

static void begin_frame(struct msl_drawing *drawing, struct msl_placed field)
{
    struct msl_frame *frame = &drawing->frames[drawing->level];
    frame->field = field;
    frame->window.trimmed = 0;
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++)
        frame->window.at[edge] = edge == MSL_LEFT || edge == MSL_BOTTOM ? -NO_END : NO_END;
}

void msl_draw_again(struct msl_drawing *drawing)
{
    const struct msl_bound outside = { 0, 0 };
    const struct msl_placed root = { drawing->root, 0, 0, 0 };
    drawing->level = 0;
    drawing->at = root;
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++)
        drawing->side[edge] = outside;
    begin_frame(drawing, root);
}

void msl_draw_start(struct msl_drawing *drawing, const struct muslin_solution *solution, uint32_t node, int32_t stage)
{
    drawing->solution = solution;
    drawing->root = node;
    drawing->stage = stage;
    msl_draw_again(drawing);
}

static const struct msl_size *size_reached(const struct msl_drawing *drawing)
{
    return msl_size_of(drawing->solution, drawing->at.node);
}

muslin_len msl_drawn_width(const struct msl_drawing *drawing)
{
    const struct msl_size *size = size_reached(drawing);
    return (drawing->at.turn & 1) != 0 ? size->height : size->width;
}

muslin_len msl_drawn_height(const struct msl_drawing *drawing)
{
    const struct msl_size *size = size_reached(drawing);
    return (drawing->at.turn & 1) != 0 ? size->width : size->height;
}

/* The seams along a part: the node's own, and where there is none those along the node. */
static void find_sides(struct msl_drawing *drawing, int64_t part)
{
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++) {
        enum msl_edge own = msl_edge_before(drawing->at.turn, (enum msl_edge)edge);
        int64_t seam = msl_seam_beside(drawing->solution, drawing->at.node, part, own);
        if (seam >= 0)
            drawing->side[edge] = (struct msl_bound){ drawing->at.node, (int32_t)seam };
    }
}

/* A trimmed node shows no more than its box. Of two trims along one line the outer one counts. */
static void narrow_window(struct msl_drawing *drawing)
{
    struct msl_window *window = &drawing->frames[drawing->level].window;
    const struct msl_placed *at = &drawing->at;
    const muslin_len box[MSL_EDGES] = { at->x, at->x + msl_drawn_width(drawing), at->y + msl_drawn_height(drawing),
                                        at->y };
    window->trimmed = 1;
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++) {
        int narrower = edge == MSL_LEFT || edge == MSL_BOTTOM ? box[edge] > window->at[edge]
                                                              : box[edge] < window->at[edge];
        if (narrower) {
            window->at[edge] = box[edge];
            window->bound[edge] = drawing->side[edge];
        }
    }
}

/* The part's box as it lies in the node: its lower left corner becomes another one as the node is turned. */
static void place_part(struct msl_drawing *drawing, const struct msl_part *part)
{
    const struct msl_size *node = size_reached(drawing);
    const struct msl_size *child = msl_size_of(drawing->solution, part->node);
    muslin_len left = part->x;
    muslin_len bottom = part->y;
    muslin_len right = left + ((part->turn & 1) != 0 ? child->height : child->width);
    muslin_len top = bottom + ((part->turn & 1) != 0 ? child->width : child->height);
    msl_turn_point(drawing->at.turn, node->width, node->height, &left, &bottom);
    msl_turn_point(drawing->at.turn, node->width, node->height, &right, &top);
    drawing->at.node = part->node;
    drawing->at.turn = msl_turn_after(drawing->at.turn, part->turn);
    drawing->at.x += left < right ? left : right;
    drawing->at.y += bottom < top ? bottom : top;
}

void msl_draw_enter(struct msl_drawing *drawing, int64_t part)
{
    const struct muslin_solution *s = drawing->solution;
    const struct msl_part found = msl_part(s, drawing->at.node, part);
    if (found.on_point) {
        struct msl_placed field = drawing->at;
        drawing->at.turn = 0;
        find_sides(drawing, part);
        drawing->level++;
        begin_frame(drawing, field);
        drawing->at = (struct msl_placed){ found.node, 0, found.x, found.y };
        return;
    }
    if (drawing->stage == MUSLIN_STAGE_FINISHED && msl_node_row(s->quilt, drawing->at.node)->kind == MUSLIN_NODE_TRIM)
        narrow_window(drawing);
    find_sides(drawing, part);
    place_part(drawing, &found);
}

/* ---- corners in their frame ------------------------------------------------------------------------------------- */

static int64_t absolute(int64_t value)
{
    return value < 0 ? -value : value;
}

/* The side on which an edge of a counter-clockwise ring lies. */
static enum msl_edge side_of(muslin_len right, muslin_len up)
{
    if (absolute(right) >= absolute(up))
        return right > 0 ? MSL_BOTTOM : MSL_TOP;
    return up > 0 ? MSL_RIGHT : MSL_LEFT;
}

/* Mirrored corners run the other way round: all but the first change places, and an edge starts where it ended. */
static void reverse(struct msl_drawn *drawn)
{
    struct msl_ring *ring = &drawn->ring;
    for (int32_t i = 1, k = ring->corners - 1; i < k; i++, k--) {
        muslin_len x = ring->x[i];
        muslin_len y = ring->y[i];
        ring->x[i] = ring->x[k];
        ring->y[i] = ring->y[k];
        ring->x[k] = x;
        ring->y[k] = y;
    }
    for (int32_t i = 0, k = ring->corners - 1; i < k; i++, k--) {
        uint8_t line = drawn->line[i];
        drawn->line[i] = drawn->line[k];
        drawn->line[k] = line;
    }
}

/* From the coordinates of a node into those of the frame in which it lies. */
static void place_point(const struct msl_drawing *drawing, const struct msl_placed *placed, muslin_len *x,
                        muslin_len *y)
{
    const struct msl_size *size = msl_size_of(drawing->solution, placed->node);
    msl_turn_point(placed->turn, size->width, size->height, x, y);
    *x += placed->x;
    *y += placed->y;
}

static void place_corners(const struct msl_drawing *drawing, const struct msl_placed *placed, struct msl_drawn *drawn)
{
    struct msl_ring *ring = &drawn->ring;
    for (int32_t i = 0; i < ring->corners; i++)
        place_point(drawing, placed, &ring->x[i], &ring->y[i]);
    if ((placed->turn & MSL_TURN_MIRRORED) != 0)
        reverse(drawn);
}

static void number_edges(struct msl_drawn *drawn)
{
    for (int32_t i = 0; i < drawn->ring.corners; i++)
        drawn->line[i] = (uint8_t)i;
}

/* Edges without a seam of the node's own lie on the sides of its box. */
static void find_sides_of(struct msl_drawn *drawn)
{
    const struct msl_ring *ring = &drawn->ring;
    for (int32_t i = 0; i < ring->corners; i++) {
        int32_t next = i + 1 < ring->corners ? i + 1 : 0;
        if (ring->seam[drawn->line[i]] < 0)
            drawn->line[i] = (uint8_t)(MSL_LINE_SIDE + side_of(ring->x[next] - ring->x[i], ring->y[next] - ring->y[i]));
    }
}

struct msl_bound msl_drawn_bound(const struct msl_drawing *drawing, const struct msl_drawn *drawn, int32_t corner)
{
    const int32_t line = drawn->line[corner];
    const int32_t window = line - MSL_LINE_WINDOW;
    if (window >= 0)
        return drawing->frames[window / MSL_EDGES].window.bound[window % MSL_EDGES];
    if (line >= MSL_LINE_SIDE)
        return drawing->side[line - MSL_LINE_SIDE];
    return (struct msl_bound){ drawing->at.node, drawn->ring.seam[line] };
}

/* ---- a piece ---------------------------------------------------------------------------------------------------- */

/* From one frame into the one before, rounded once. */
static void leave_frame(const struct msl_drawing *drawing, const struct msl_placed *field, struct msl_drawn *drawn)
{
    struct msl_ring *ring = &drawn->ring;
    for (int32_t i = 0; i < ring->corners; i++)
        msl_diagonal_point(drawing->solution, field->node, ring->x[i], ring->y[i], &ring->x[i], &ring->y[i]);
    place_corners(drawing, field, drawn);
}

void msl_draw_piece(const struct msl_drawing *drawing, int64_t piece, struct msl_drawn *drawn)
{
    msl_outline(drawing->solution, drawing->at.node, piece, drawing->stage, &drawn->ring);
    number_edges(drawn);
    place_corners(drawing, &drawing->at, drawn);
    find_sides_of(drawn);
    for (int32_t level = drawing->level; level >= 0; level--) {
        if (drawing->frames[level].window.trimmed)
            msl_trim_drawn(drawing, level, drawn);
        if (level > 0)
            leave_frame(drawing, &drawing->frames[level].field, drawn);
    }
}

void msl_draw_point(const struct msl_drawing *drawing, muslin_len *x, muslin_len *y)
{
    for (int32_t level = drawing->level; level > 0; level--) {
        const struct msl_placed *field = &drawing->frames[level].field;
        msl_diagonal_point(drawing->solution, field->node, *x, *y, x, y);
        place_point(drawing, field, x, y);
    }
}

void msl_draw_patch(struct msl_drawing *drawing, int64_t patch, struct msl_drawn *drawn)
{
    const struct muslin_solution *s = drawing->solution;
    msl_draw_again(drawing);
    while (patch >= msl_pieces(s, drawing->at.node)) {
        int64_t before;
        int64_t part = msl_part_with(s, drawing->at.node, patch, &before);
        patch -= before;
        msl_draw_enter(drawing, part);
    }
    msl_draw_piece(drawing, patch, drawn);
}

/* ---- prints ----------------------------------------------------------------------------------------------------- */

static struct msl_print_lying lying_in(struct msl_print_lying inner, int32_t turn)
{
    int32_t mirrored = (turn & MSL_TURN_MIRRORED) != 0;
    struct msl_print_lying lying = { 2 * (turn & MSL_TURN_QUARTERS), inner.mirrored ^ mirrored };
    lying.eighths = (lying.eighths + (mirrored ? 8 - inner.eighths : inner.eighths)) & 7;
    return lying;
}

struct msl_print_lying msl_drawn_lying(const struct msl_drawing *drawing, int32_t print)
{
    const struct msl_print_lying upright = { print == MSL_TURN_EIGHTH, 0 };
    struct msl_print_lying lying = lying_in(lying_in(upright, print), drawing->at.turn);
    for (int32_t level = drawing->level; level > 0; level--) {
        lying.eighths = (lying.eighths + 1) & 7;
        lying = lying_in(lying, drawing->frames[level].field.turn);
    }
    return lying;
}
