/* solution_trimming.c - what is left of a piece that is drawn, once its node is trimmed.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_drawing.h"

static int64_t absolute(int64_t value)
{
    return value < 0 ? -value : value;
}

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
    int32_t line;
};

static struct start start_at(const struct msl_drawn *drawn, int32_t i)
{
    return (struct start){ drawn->ring.x[i], drawn->ring.y[i], drawn->line[i] };
}

static void put_start(struct msl_drawn *drawn, int32_t i, struct start start)
{
    drawn->ring.x[i] = start.x;
    drawn->ring.y[i] = start.y;
    drawn->line[i] = (uint8_t)start.line;
}

/* A piece being trimmed is a round of lines: its own edges by their number, and sides of the window (from WINDOW on).
 * Where its corners come to lie follows at the end, from two lines each, rounded once. Until then its own corners lie
 * at the end of the ring's room. */
enum { WINDOW = MSL_RING_ROOM };

struct trimming {
    const struct msl_window *window;
    struct msl_drawn *drawn;
    struct start first;
    int32_t level;   /* of the frame */
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
    return (struct start){ window->at[upright], window->at[level], 0 };
}

static struct start crossing(const struct trimming *t, int32_t edge, enum msl_edge side)
{
    const struct start from = own_corner(t, edge);
    const struct start to = own_corner(t, edge + 1);
    const muslin_len first = absolute(inside_by(t->window, side, from.x, from.y));
    const muslin_len last = absolute(inside_by(t->window, side, to.x, to.y));
    return (struct start){ between(from.x, to.x, first, last), between(from.y, to.y, first, last), 0 };
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
    corner.line = MSL_LINE_WINDOW + MSL_EDGES * t->level + (int32_t)side;
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

void msl_trim_drawn(const struct msl_drawing *drawing, int32_t level, struct msl_drawn *drawn)
{
    const struct msl_window *window = &drawing->frames[level].window;
    struct trimming t = { .window = window, .drawn = drawn, .level = level, .corners = drawn->ring.corners };
    if (window->at[MSL_LEFT] >= window->at[MSL_RIGHT] || window->at[MSL_BOTTOM] >= window->at[MSL_TOP])
        t.corners = 0;
    t.first = start_at(drawn, 0);
    t.lines = t.corners;
    for (int32_t i = t.corners - 1; i >= 0; i--) {
        put_start(drawn, i + MSL_RING_ROOM - t.corners, start_at(drawn, i));
        t.line[i] = (uint8_t)i;
    }
    for (int side = MSL_LEFT; side < MSL_EDGES; side++)
        trim_side(&t, (enum msl_edge)side);
    write_corners(&t);
}
