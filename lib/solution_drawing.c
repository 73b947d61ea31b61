/* solution_drawing.c - going down a tree to one outline after another.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_drawing.h"

/* ---- down the tree ---------------------------------------------------------------------------------------------- */

/* Farther than anything is drawn: positions add up sizes below 2^31 over at most MUSLIN_DEPTH_MAX nodes. */
#define NO_END (INT64_C(1) << 60)

static void begin_frame(struct msl_drawing *drawing, struct msl_placed field)
{
    const struct msl_bound outside = { 0, 0 };
    struct msl_frame *frame = &drawing->frames[drawing->level];
    frame->field = field;
    frame->window.trimmed = 0;
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++) {
        frame->window.at[edge] = edge == MSL_LEFT || edge == MSL_BOTTOM ? -NO_END : NO_END;
        frame->window.bound[edge] = outside;
    }
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

/* Edges that lie on a side are marked with it until its seam is known. */
static int32_t mark_of(enum msl_edge side)
{
    return -1 - (int32_t)side;
}

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
        int32_t seam = ring->seam[i];
        uint32_t node = drawn->seam_node[i];
        ring->seam[i] = ring->seam[k];
        drawn->seam_node[i] = drawn->seam_node[k];
        ring->seam[k] = seam;
        drawn->seam_node[k] = node;
    }
}

/* From the coordinates of a node into those of the frame in which it lies. */
static void place_corners(const struct msl_drawing *drawing, const struct msl_placed *placed, struct msl_drawn *drawn)
{
    const struct msl_size *size = msl_size_of(drawing->solution, placed->node);
    struct msl_ring *ring = &drawn->ring;
    for (int32_t i = 0; i < ring->corners; i++) {
        msl_turn_point(placed->turn, size->width, size->height, &ring->x[i], &ring->y[i]);
        ring->x[i] += placed->x;
        ring->y[i] += placed->y;
    }
    if ((placed->turn & MSL_TURN_MIRRORED) != 0)
        reverse(drawn);
}

/* Own seams are the leaf's; edges on its outside have none yet. */
static void name_own(uint32_t node, struct msl_drawn *drawn)
{
    for (int32_t i = 0; i < drawn->ring.corners; i++)
        drawn->seam_node[i] = drawn->ring.seam[i] < 0 ? 0 : node;
}

static void mark_sides(struct msl_drawn *drawn)
{
    struct msl_ring *ring = &drawn->ring;
    for (int32_t i = 0; i < ring->corners; i++) {
        int32_t next = i + 1 < ring->corners ? i + 1 : 0;
        if (ring->seam[i] < 0)
            ring->seam[i] = mark_of(side_of(ring->x[next] - ring->x[i], ring->y[next] - ring->y[i]));
    }
}

static void name_sides(const struct msl_bound *bounds, struct msl_drawn *drawn)
{
    for (int32_t i = 0; i < drawn->ring.corners; i++)
        if (drawn->ring.seam[i] < 0) {
            const struct msl_bound *bound = &bounds[-1 - drawn->ring.seam[i]];
            drawn->seam_node[i] = bound->node;
            drawn->ring.seam[i] = bound->seam;
        }
}

/* ---- trimmed ---------------------------------------------------------------------------------------------------- */

/* How far inside one side of the window a corner lies; below 0: outside. */
static muslin_len inside_by(const struct msl_window *window, enum msl_edge side, muslin_len x, muslin_len y)
{
    switch (side) {
    case MSL_LEFT:
        return x - window->at[MSL_LEFT];
    case MSL_RIGHT:
        return window->at[MSL_RIGHT] - x;
    case MSL_TOP:
        return window->at[MSL_TOP] - y;
    default:
        return y - window->at[MSL_BOTTOM];
    }
}

/* `from` and the part first / (first + last) of the way to `to`: the nearest whole number, a half up, whichever end is
 * called the first. Pieces are at most MUSLIN_SIZE_MAX across. */
static muslin_len between(muslin_len from, muslin_len to, muslin_len first, muslin_len last)
{
    int64_t twice = 2 * (first + last);
    int64_t way = 2 * (to - from) * first + first + last;
    int64_t whole = way / twice;
    return from + whole - (way < whole * twice);
}

/* A corner with the edge that starts there. */
struct start {
    muslin_len x;
    muslin_len y;
    uint32_t node;
    int32_t seam;
};

static struct start start_at(const struct msl_drawn *drawn, int32_t i)
{
    return (struct start){ drawn->ring.x[i], drawn->ring.y[i], drawn->seam_node[i], drawn->ring.seam[i] };
}

static void put_start(struct msl_drawn *drawn, int32_t i, struct start start)
{
    drawn->ring.x[i] = start.x;
    drawn->ring.y[i] = start.y;
    drawn->ring.seam[i] = start.seam;
    drawn->seam_node[i] = start.node;
}

/* A ring being trimmed along one side, in place: what is left is written from the start of its room while what there
 * was is read from the end. */
struct trimming {
    const struct msl_window *window;
    struct msl_drawn *drawn;
    int32_t free; /* corners up to here have been read */
    enum msl_edge side;
};

/* A piece of the caller's own that is left with more corners than there is room for loses some. */
static void append(const struct trimming *trimming, struct start start)
{
    struct msl_ring *ring = &trimming->drawn->ring;
    if (ring->corners < trimming->free)
        put_start(trimming->drawn, ring->corners++, start);
}

/* What is left of an edge, and where it crosses (I. E. Sutherland and G. W. Hodgman, Reentrant polygon clipping,
 * 1974). */
static void trim_edge(const struct trimming *trimming, struct start from, const struct start *to)
{
    muslin_len first = inside_by(trimming->window, trimming->side, from.x, from.y);
    muslin_len last = inside_by(trimming->window, trimming->side, to->x, to->y);
    struct start along = from;
    along.node = 0;
    along.seam = mark_of(trimming->side);
    if (first >= 0)
        append(trimming, first == 0 && last <= 0 ? along : from);
    if (first > 0 && last < 0) {
        along.x = between(from.x, to->x, first, -last);
        along.y = between(from.y, to->y, first, -last);
        append(trimming, along);
    }
    if (first < 0 && last > 0) {
        from.x = between(from.x, to->x, -first, last);
        from.y = between(from.y, to->y, -first, last);
        append(trimming, from);
    }
}

static void trim_side(const struct msl_window *window, enum msl_edge side, struct msl_drawn *drawn)
{
    struct msl_ring *ring = &drawn->ring;
    int32_t moved = MSL_RING_ROOM - ring->corners;
    for (int32_t i = ring->corners - 1; i >= 0; i--)
        put_start(drawn, i + moved, start_at(drawn, i));
    struct trimming trimming = { window, drawn, 0, side };
    const struct start first = start_at(drawn, moved);
    struct start from = first;
    ring->corners = 0;
    for (int32_t i = moved + 1; i < MSL_RING_ROOM; i++) {
        struct start to = start_at(drawn, i);
        trimming.free = i;
        trim_edge(&trimming, from, &to);
        from = to;
    }
    trimming.free = MSL_RING_ROOM;
    trim_edge(&trimming, from, &first);
}

int64_t msl_ring_area(const struct msl_ring *ring)
{
    uint64_t sum = 0; /* parts of it may pass 64 bits, the whole does not */
    for (int32_t i = 1; i + 1 < ring->corners; i++) {
        uint64_t across = (uint64_t)(ring->x[i] - ring->x[0]) * (uint64_t)(ring->y[i + 1] - ring->y[0]);
        uint64_t down = (uint64_t)(ring->x[i + 1] - ring->x[0]) * (uint64_t)(ring->y[i] - ring->y[0]);
        sum += across - down;
    }
    return (int64_t)sum;
}

static void trim_to(const struct msl_window *window, struct msl_drawn *drawn)
{
    for (int side = MSL_LEFT; side < MSL_EDGES && drawn->ring.corners > 0; side++)
        trim_side(window, (enum msl_edge)side, drawn);
    if (msl_ring_area(&drawn->ring) == 0)
        drawn->ring.corners = 0;
    name_sides(window->bound, drawn);
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
    name_own(drawing->at.node, drawn);
    place_corners(drawing, &drawing->at, drawn);
    mark_sides(drawn);
    name_sides(drawing->side, drawn);
    for (int32_t level = drawing->level; level >= 0; level--) {
        const struct msl_frame *frame = &drawing->frames[level];
        if (frame->window.trimmed)
            trim_to(&frame->window, drawn);
        if (level > 0)
            leave_frame(drawing, &frame->field, drawn);
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
