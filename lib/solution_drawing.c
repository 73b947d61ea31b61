/* solution_drawing.c - going down a tree to one outline after another.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_drawing.h"

/* ---- down the tree ---------------------------------------------------------------------------------------------- */

/* Farther than anything is drawn: positions add up sizes below 2^31 over at most MUSLIN_QUILT_DEPTH_MAX nodes. */
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

/* A piece being trimmed is a round of lines: its own edges by their number, and sides of the window (from WINDOW on).
 * Where its corners come to lie follows at the end, from two lines each, rounded once. Until then its own corners lie
 * at the end of the ring's room. */
enum { WINDOW = MSL_RING_ROOM };

struct trimming {
    const struct msl_window *window;
    struct msl_drawn *drawn;
    struct start first;
    int32_t corners; /* its own */
    int32_t lines;
    uint8_t line[MSL_RING_ROOM];
};

static struct start own_corner(const struct trimming *t, int32_t k)
{
    return k == t->corners ? t->first : start_at(t->drawn, MSL_RING_ROOM - t->corners + k);
}

/* The line before line i. */
static int32_t line_before(const struct trimming *t, int32_t i)
{
    return t->line[i > 0 ? i - 1 : t->lines - 1];
}

/* Left and right come before top and bottom. */
static int is_upright(enum msl_edge side)
{
    return side < MSL_TOP;
}

static int64_t sign_of(int64_t value)
{
    return (value > 0) - (value < 0);
}

/* Where an edge crosses one side of the window: above 0 inside of another, below 0 outside. */
static int64_t crosses_inside(const struct trimming *t, int32_t edge, enum msl_edge crossed, enum msl_edge side)
{
    const struct start from = own_corner(t, edge);
    const struct start to = own_corner(t, edge + 1);
    const int64_t first = absolute(inside_by(t->window, crossed, from.x, from.y));
    const int64_t last = absolute(inside_by(t->window, crossed, to.x, to.y));
    const int64_t at_first = inside_by(t->window, side, from.x, from.y);
    const int64_t at_last = inside_by(t->window, side, to.x, to.y);
    if (sign_of(at_first) * sign_of(at_last) > 0)
        return at_first;
    return at_first * last + at_last * first;
}

/* Above 0 where the corner at which line i starts lies inside of a side, below 0 where it lies outside. */
static int64_t starts_inside(const struct trimming *t, int32_t i, enum msl_edge side)
{
    const int32_t before = line_before(t, i);
    const int32_t at = t->line[i];
    if (before < WINDOW && at < WINDOW) {
        const struct start corner = own_corner(t, at);
        return inside_by(t->window, side, corner.x, corner.y);
    }
    if (before >= WINDOW && at >= WINDOW)
        return 1;
    const enum msl_edge crossed = (enum msl_edge)((before < WINDOW ? at : before) - WINDOW);
    const int32_t edge = before < WINDOW ? before : at;
    return is_upright(crossed) == is_upright(side) ? 1 : crosses_inside(t, edge, crossed, side);
}

/* Cuts away what lies outside of one side (I. E. Sutherland and G. W. Hodgman, Reentrant polygon clipping, 1974): lines
 * of which nothing is left go, and where the round leaves the inside it goes on along the side. A piece of the caller's
 * own that is left with more lines than there is room for is left out. */
static void trim_side(struct trimming *t, enum msl_edge side)
{
    int8_t inside[MSL_RING_ROOM];
    uint8_t line[2 * MSL_RING_ROOM];
    int32_t lines = 0;
    for (int32_t i = 0; i < t->lines; i++)
        inside[i] = (int8_t)sign_of(starts_inside(t, i, side));
    for (int32_t i = 0; i < t->lines; i++) {
        const int8_t end = inside[(i + 1) % t->lines];
        const int8_t next = inside[(i + 2) % t->lines];
        if (inside[i] <= 0 && end <= 0)
            continue;
        line[lines++] = t->line[i];
        if (end < 0 || (end == 0 && next <= 0))
            line[lines++] = (uint8_t)(WINDOW + side);
    }
    t->lines = lines * (lines <= MSL_RING_ROOM);
    for (int32_t i = 0; i < t->lines; i++)
        t->line[i] = line[i];
}

static struct start window_corner(const struct msl_window *window, enum msl_edge side, enum msl_edge other)
{
    const enum msl_edge upright = is_upright(side) ? side : other;
    const enum msl_edge level = is_upright(side) ? other : side;
    return (struct start){ window->at[upright], window->at[level], 0, 0 };
}

static struct start crossing(const struct trimming *t, int32_t edge, enum msl_edge side)
{
    const struct start from = own_corner(t, edge);
    const struct start to = own_corner(t, edge + 1);
    const muslin_len first = absolute(inside_by(t->window, side, from.x, from.y));
    const muslin_len last = absolute(inside_by(t->window, side, to.x, to.y));
    return (struct start){ between(from.x, to.x, first, last), between(from.y, to.y, first, last), 0, 0 };
}

/* The corner at which line i starts. */
static struct start corner_of(const struct trimming *t, int32_t i)
{
    const int32_t before = line_before(t, i);
    const int32_t at = t->line[i];
    struct start corner;
    if (at < WINDOW) {
        corner = own_corner(t, at);
        if (before < WINDOW)
            return corner;
        const struct start crossed = crossing(t, at, (enum msl_edge)(before - WINDOW));
        corner.x = crossed.x;
        corner.y = crossed.y;
        return corner;
    }
    const enum msl_edge side = (enum msl_edge)(at - WINDOW);
    corner = before < WINDOW ? crossing(t, before, side)
                             : window_corner(t->window, side, (enum msl_edge)(before - WINDOW));
    corner.seam = mark_of(side);
    return corner;
}

/* Writes the corners from the start of the ring's room on. Edges come in the order of their numbers, and there are at
 * most twice as many lines: what is overwritten has been read. */
static void write_corners(struct trimming *t)
{
    for (int32_t i = 0; i < t->lines; i++)
        put_start(t->drawn, i, corner_of(t, i));
    t->drawn->ring.corners = t->lines;
}

static void trim_to(const struct msl_window *window, struct msl_drawn *drawn)
{
    struct trimming t = { .window = window, .drawn = drawn, .corners = drawn->ring.corners };
    if (window->at[MSL_LEFT] >= window->at[MSL_RIGHT] || window->at[MSL_BOTTOM] >= window->at[MSL_TOP])
        t.corners = drawn->ring.corners = 0;
    if (t.corners == 0)
        return;
    t.first = start_at(drawn, 0);
    t.lines = t.corners;
    for (int32_t i = t.corners - 1; i >= 0; i--) {
        put_start(drawn, i + MSL_RING_ROOM - t.corners, start_at(drawn, i));
        t.line[i] = (uint8_t)i;
    }
    for (int side = MSL_LEFT; side < MSL_EDGES; side++)
        trim_side(&t, (enum msl_edge)side);
    write_corners(&t);
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
