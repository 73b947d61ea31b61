/* quilt_piecing.c - the seams between the pieces of a drawing: where a side of one lies on a side of another.
 *
 * SPDX-License-Identifier: MIT
 *
 * Coordinates are below 2^21, so products of two differences fit 64 bits. */
#include "quilt_piecing.h"

/* ---- corners and sides ------------------------------------------------------------------------------------------ */

static int32_t x_of(const struct msl_piecing_pattern *pattern, int32_t corner)
{
    return pattern->places[2 * corner];
}

static int32_t y_of(const struct msl_piecing_pattern *pattern, int32_t corner)
{
    return pattern->places[2 * corner + 1];
}

static int32_t corner_after(const struct msl_piecing_pattern *pattern, int32_t piece, int32_t corner)
{
    return corner + 1 == pattern->first[piece + 1] ? pattern->first[piece] : corner + 1;
}

static int32_t corner_before(const struct msl_piecing_pattern *pattern, int32_t piece, int32_t corner)
{
    return corner == pattern->first[piece] ? pattern->first[piece + 1] - 1 : corner - 1;
}

static int in_line(const struct msl_piecing_pattern *pattern, int32_t a, int32_t b, int32_t c)
{
    int64_t ax = x_of(pattern, a), ay = y_of(pattern, a);
    return (x_of(pattern, b) - ax) * (y_of(pattern, c) - ay) == (y_of(pattern, b) - ay) * (x_of(pattern, c) - ax);
}

static int in_a_side(const struct msl_piecing_pattern *pattern, int32_t piece, int32_t corner)
{
    return in_line(pattern, corner_before(pattern, piece, corner), corner, corner_after(pattern, piece, corner));
}

/* Along any line: from below to above, on a level line from left to right. */
static int comes_before(const struct msl_piecing_pattern *pattern, int32_t a, int32_t b)
{
    int32_t up = y_of(pattern, b) - y_of(pattern, a);
    return up > 0 || (up == 0 && x_of(pattern, a) < x_of(pattern, b));
}

/* A stretch of a line between two corners; of no length where both are the same. */
struct stretch {
    int32_t from;
    int32_t to;
};

/* The straight side of a piece that starts at this corner, in the piece's own direction; of no length where the corner
 * lies within a side. */
static struct stretch side_at(const struct msl_piecing_pattern *pattern, int32_t piece, int32_t corner)
{
    struct stretch side = { corner, corner };
    if (in_a_side(pattern, piece, corner))
        return side;
    do
        side.to = corner_after(pattern, piece, side.to);
    while (in_a_side(pattern, piece, side.to));
    return side;
}

static struct stretch turned_back(struct stretch stretch)
{
    struct stretch back = { stretch.to, stretch.from };
    return back;
}

static int rises(const struct msl_piecing_pattern *pattern, struct stretch stretch)
{
    return comes_before(pattern, stretch.from, stretch.to);
}

/* What two rising stretches have in common; it does not rise where that is nothing. */
static struct stretch common(const struct msl_piecing_pattern *pattern, struct stretch a, struct stretch b)
{
    struct stretch both = { a.from, a.from };
    if (!in_line(pattern, a.from, a.to, b.from) || !in_line(pattern, a.from, a.to, b.to))
        return both;
    both.from = comes_before(pattern, a.from, b.from) ? b.from : a.from;
    both.to = comes_before(pattern, b.to, a.to) ? b.to : a.to;
    return both;
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

static void add_seam(int32_t *args, int32_t first, int32_t second, struct stretch stretch)
{
    int32_t *seam = args + (msl_piecing_seam(args, args[PIECING_SEAMS]) - args);
    seam[SEAM_FIRST] = first;
    seam[SEAM_SECOND] = second;
    seam[SEAM_FROM] = stretch.from;
    seam[SEAM_TO] = stretch.to;
    args[PIECING_SEAMS]++;
}

/* A piece has its cloth on the left of its sides, so a seam lies where a rising side of the first piece meets a falling
 * one of the second. */
static void sew_side(const struct msl_piecing_pattern *pattern, int32_t piece, struct stretch side, int32_t *args)
{
    for (int32_t other = 0; other < pattern->pieces; other++)
        for (int32_t i = pattern->first[other]; i < pattern->first[other + 1]; i++) {
            struct stretch falling = turned_back(side_at(pattern, other, i));
            struct stretch both = rises(pattern, falling) ? common(pattern, side, falling) : falling;
            if (rises(pattern, both))
                add_seam(args, piece, other, both);
        }
}

static void find_seams(const struct msl_piecing_pattern *pattern, int32_t *args)
{
    for (int32_t piece = 0; piece < pattern->pieces; piece++)
        for (int32_t i = pattern->first[piece]; i < pattern->first[piece + 1]; i++) {
            struct stretch side = side_at(pattern, piece, i);
            if (rises(pattern, side))
                sew_side(pattern, piece, side, args);
        }
}

static struct stretch seam_at(const int32_t *args, int32_t seam)
{
    const int32_t *row = msl_piecing_seam(args, seam);
    struct stretch stretch = { row[SEAM_FROM], row[SEAM_TO] };
    return stretch;
}

/* Whether the edge that starts at a corner lies along a seam of its piece, wholly or in part. */
static int lies_along(const struct msl_piecing_pattern *pattern, int32_t piece, int32_t corner, struct stretch seam)
{
    struct stretch edge = { corner, corner_after(pattern, piece, corner) };
    return rises(pattern, common(pattern, seam, rises(pattern, edge) ? edge : turned_back(edge)));
}

/* The first seam along each edge. */
static void number_edges(const struct msl_piecing_pattern *pattern, int32_t *args)
{
    int32_t *edges = args + PIECING_FIRST + pattern->pieces + 1;
    for (int32_t i = 0; i < pattern->first[pattern->pieces]; i++)
        edges[i] = -1;
    for (int32_t seam = args[PIECING_SEAMS] - 1; seam >= 0; seam--)
        for (int32_t which = SEAM_FIRST; which <= SEAM_SECOND; which++) {
            int32_t piece = msl_piecing_seam(args, seam)[which];
            for (int32_t i = pattern->first[piece]; i < pattern->first[piece + 1]; i++)
                if (lies_along(pattern, piece, i, seam_at(args, seam)))
                    edges[i] = seam;
        }
}

/* ---- halves joined through the middle ---------------------------------------------------------------------------- */

static int is_same_place(const struct msl_piecing_pattern *pattern, int32_t a, int32_t b)
{
    return x_of(pattern, a) == x_of(pattern, b) && y_of(pattern, a) == y_of(pattern, b);
}

/* Whether the seam `upper` begins where `lower` ends, and runs on in its line. */
static int runs_on(const struct msl_piecing_pattern *pattern, const int32_t *args, int32_t lower, int32_t upper)
{
    struct stretch below = seam_at(args, lower);
    struct stretch above = seam_at(args, upper);
    return is_same_place(pattern, below.to, above.from) && in_line(pattern, below.from, below.to, above.to);
}

/* The two become one, with the lower one's place among the seams; later seams and the edges' numbers follow. */
static void make_one(const struct msl_piecing_pattern *pattern, int32_t *args, int32_t lower, int32_t upper)
{
    int32_t *edges = args + PIECING_FIRST + pattern->pieces + 1;
    int32_t *seams = args + (msl_piecing_seam(args, 0) - args);
    seams[SEAM_ARGS * lower + SEAM_SECOND] = seams[SEAM_ARGS * upper + SEAM_SECOND];
    seams[SEAM_ARGS * lower + SEAM_TO] = seams[SEAM_ARGS * upper + SEAM_TO];
    args[PIECING_SEAMS]--;
    for (int32_t i = SEAM_ARGS * upper; i < SEAM_ARGS * args[PIECING_SEAMS]; i++)
        seams[i] = seams[i + SEAM_ARGS];
    for (int32_t i = 0; i < pattern->first[pattern->pieces]; i++) {
        int32_t seam = edges[i] == upper ? lower : edges[i];
        edges[i] = seam - (seam > upper);
    }
}

static void join_halves(const struct msl_piecing_pattern *pattern, int32_t *args)
{
    for (int32_t lower = 0; lower < args[PIECING_SEAMS]; lower++)
        for (int32_t upper = 0; upper < args[PIECING_SEAMS]; upper++)
            if (runs_on(pattern, args, lower, upper)) {
                make_one(pattern, args, lower, upper);
                return;
            }
}

/* ---- counts ----------------------------------------------------------------------------------------------------- */

static int32_t greater(int32_t a, int32_t b)
{
    return a > b ? a : b;
}

/* How far a seam reaches across, from left to right. */
static struct stretch reach_across(const struct msl_piecing_pattern *pattern, const int32_t *args, int32_t seam)
{
    struct stretch reach = seam_at(args, seam);
    return x_of(pattern, reach.from) <= x_of(pattern, reach.to) ? reach : turned_back(reach);
}

/* The most seams that a level line crosses, and an upright one. There are more only where a seam begins, so lines just
 * above the lower ends, and just right of the left ones, tell. */
static void count_crossings(const struct msl_piecing_pattern *pattern, int32_t *args)
{
    args[PIECING_ACROSS] = args[PIECING_DOWN] = 0;
    for (int32_t i = 0; i < args[PIECING_SEAMS]; i++) {
        int32_t level = y_of(pattern, seam_at(args, i).from);
        int32_t upright = x_of(pattern, reach_across(pattern, args, i).from);
        int32_t across = 0;
        int32_t down = 0;
        for (int32_t k = 0; k < args[PIECING_SEAMS]; k++) {
            struct stretch seam = seam_at(args, k);
            struct stretch reach = reach_across(pattern, args, k);
            across += y_of(pattern, seam.from) <= level && level < y_of(pattern, seam.to);
            down += x_of(pattern, reach.from) <= upright && upright < x_of(pattern, reach.to);
        }
        args[PIECING_ACROSS] = greater(args[PIECING_ACROSS], across);
        args[PIECING_DOWN] = greater(args[PIECING_DOWN], down);
    }
}

/* Left, right, top, bottom. */
static int on_edge(const struct msl_piecing_pattern *pattern, int32_t corner, int32_t edge)
{
    switch (edge) {
    case 0:
        return x_of(pattern, corner) == 0;
    case 1:
        return x_of(pattern, corner) == pattern->width;
    case 2:
        return y_of(pattern, corner) == pattern->height;
    default:
        return y_of(pattern, corner) == 0;
    }
}

static int32_t count_along(const struct msl_piecing_pattern *pattern, int32_t edge)
{
    int32_t along = 0;
    for (int32_t piece = 0; piece < pattern->pieces; piece++)
        for (int32_t i = pattern->first[piece]; i < pattern->first[piece + 1]; i++) {
            struct stretch side = side_at(pattern, piece, i);
            along += side.from != side.to && on_edge(pattern, side.from, edge) && on_edge(pattern, side.to, edge);
        }
    return along;
}

uint32_t msl_find_piecing(const struct msl_piecing_pattern *pattern, int32_t *args)
{
    args[PIECING_PIECES] = pattern->pieces;
    args[PIECING_SEAMS] = 0;
    find_seams(pattern, args);
    number_edges(pattern, args);
    if (pattern->in_halves)
        join_halves(pattern, args);
    count_crossings(pattern, args);
    for (int32_t edge = 0; edge < 4; edge++)
        args[PIECING_ALONG + edge] = count_along(pattern, edge);
    return (uint32_t)(msl_piecing_seam(args, args[PIECING_SEAMS]) - args);
}
