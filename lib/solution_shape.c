/* solution_shape.c - the caller's own shapes, solved.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_pieced.h"

#include "root.h"
#include "shape_moved.h"
#include "wide.h"

/* Of a node: its arguments, and where among them its corners and its seams are. */
struct shape {
    const int32_t *args;
    const int32_t *places;
    const int32_t *piecing;
    muslin_len width;
    muslin_len height;
};

static muslin_len value_or_drawn(const struct muslin_solution *solution, int32_t measure, int32_t drawn)
{
    return measure == 0 ? drawn : msl_value_of(solution, measure);
}

static struct shape shape_of(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    struct shape shape = { .args = args, .places = args + SHAPE_FABRICS + args[SHAPE_PIECES] };
    shape.piecing = shape.places + 2 * args[SHAPE_CORNERS];
    shape.width = value_or_drawn(solution, args[SHAPE_WIDTH], args[SHAPE_DRAWN_WIDTH]);
    shape.height = value_or_drawn(solution, args[SHAPE_HEIGHT], args[SHAPE_DRAWN_HEIGHT]);
    return shape;
}

/* ---- corners ---------------------------------------------------------------------------------------------------- */

/* A coordinate at its size; *exact stays 1 only where nothing is rounded. */
static muslin_len sized(int64_t place, muslin_len size, int64_t drawn, int32_t *exact)
{
    *exact &= place * size % drawn == 0;
    return (2 * place * size + drawn) / (2 * drawn);
}

static struct msl_place finished_at(const struct shape *shape, int32_t corner, int32_t *exact)
{
    struct msl_place place;
    place.x = sized(shape->places[2 * corner], shape->width, shape->args[SHAPE_DRAWN_WIDTH], exact);
    place.y = sized(shape->places[2 * corner + 1], shape->height, shape->args[SHAPE_DRAWN_HEIGHT], exact);
    return place;
}

/* The edges that arrive at a corner of a piece and leave it, finished. */
struct turn {
    struct msl_place at;
    int64_t a, b;
    int64_t c, d;
    int32_t exact;
};

static struct turn turn_at(const struct shape *shape, int64_t piece, int32_t corner)
{
    const int32_t first = msl_first_corner(shape->piecing, piece);
    const int32_t last = msl_first_corner(shape->piecing, piece + 1) - 1;
    int32_t others_exact = 1;
    struct turn turn = { .exact = 1 };
    turn.at = finished_at(shape, corner, &turn.exact);
    struct msl_place before = finished_at(shape, corner == first ? last : corner - 1, &others_exact);
    struct msl_place after = finished_at(shape, corner == last ? first : corner + 1, &others_exact);
    turn.a = turn.at.x - before.x;
    turn.b = turn.at.y - before.y;
    turn.c = after.x - turn.at.x;
    turn.d = after.y - turn.at.y;
    return turn;
}

/* ---- size ------------------------------------------------------------------------------------------------------- */

static int64_t up_to_root(int64_t square)
{
    uint64_t rest;
    uint64_t root = msl_root((uint64_t)square, &rest);
    return (int64_t)(root + (rest != 0));
}

/* Whether the raw corner lies within MUSLIN_TEMPLATE_REACH_MAX of the finished one. Between edges L and M long it lies
 * seam sqrt(L M (L M - dot) / 2) / cross away, where `seam` is twice the allowance. Where the angle is below a right
 * one (dot below 0) that is at most seam L M / cross, and nearly that where it is sharp; else it is below the seam. */
static int is_in_reach(const struct turn *turn, int64_t seam)
{
    int64_t cross = turn->a * turn->d - turn->b * turn->c;
    if (turn->a * turn->c + turn->b * turn->d >= 0)
        return seam <= MUSLIN_TEMPLATE_REACH_MAX;
    int64_t lengths = up_to_root(turn->a * turn->a + turn->b * turn->b) *
                      up_to_root(turn->c * turn->c + turn->d * turn->d);
    return msl_wide_compare(msl_wide_multiply(lengths, seam),
                            msl_wide_multiply(MUSLIN_TEMPLATE_REACH_MAX, cross < 0 ? -cross : cross)) <= 0;
}

static void want_corner(struct msl_check *check, const struct shape *shape, int64_t piece, int32_t corner, int64_t seam)
{
    const struct turn turn = turn_at(shape, piece, corner);
    if (turn.c == 0 && turn.d == 0)
        msl_fail(check, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE, piece, 0);
    else if (!is_in_reach(&turn, seam))
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PIECE, piece, 0);
}

/* Every piece can be drawn, finished and raw. */
static void want_pieces(struct msl_check *check, const struct shape *shape, int64_t seam)
{
    for (int64_t piece = 0; piece < shape->piecing[PIECING_PIECES]; piece++)
        for (int32_t corner = msl_first_corner(shape->piecing, piece);
             check->status == MUSLIN_OK && corner < msl_first_corner(shape->piecing, piece + 1); corner++)
            want_corner(check, shape, piece, corner, seam);
}

void msl_shape_size(struct msl_solving *solving, uint32_t node)
{
    const struct shape shape = shape_of(solving->solution, node);
    msl_want_node_size(solving, MUSLIN_ARG_FINISHED, shape.width);
    msl_want_node_size(solving, MUSLIN_ARG_FINISHED, shape.height);
    want_pieces(solving->check, &shape, msl_seam_of(solving->solution));
    msl_pieced_size(solving, node, shape.piecing, shape.width, shape.height);
}

/* ---- pieces ----------------------------------------------------------------------------------------------------- */

int64_t msl_shape_pieces(const struct muslin_solution *solution, uint32_t node)
{
    return shape_of(solution, node).piecing[PIECING_PIECES];
}

void msl_shape_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                       struct msl_ring *ring)
{
    const struct shape shape = shape_of(solution, node);
    const int64_t seam = stage == MUSLIN_STAGE_RAW ? msl_seam_of(solution) : 0;
    const int32_t first = msl_first_corner(shape.piecing, piece);
    ring->fabric = (uint32_t)shape.args[SHAPE_FABRICS + piece];
    ring->region = (int32_t)piece + 1;
    ring->corners = msl_first_corner(shape.piecing, piece + 1) - first;
    ring->exact = 1;
    for (int32_t k = 0; k < ring->corners; k++) {
        const struct turn turn = turn_at(&shape, piece, first + k);
        const struct msl_moved moved = msl_corner_moved(turn.a, turn.b, turn.c, turn.d, seam);
        ring->x[k] = turn.at.x + moved.x;
        ring->y[k] = turn.at.y + moved.y;
        ring->seam[k] = msl_piecing_along(shape.piecing, first + k);
        ring->exact &= turn.exact;
    }
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

int64_t msl_shape_seams(const struct muslin_solution *solution, uint32_t node)
{
    return shape_of(solution, node).piecing[PIECING_SEAMS];
}

struct msl_seam msl_shape_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct shape shape = shape_of(solution, node);
    const int32_t *seam = msl_piecing_seam(shape.piecing, k);
    int32_t exact = 1;
    return msl_pieced_seam(solution, seam, finished_at(&shape, seam[SEAM_FROM], &exact),
                           finished_at(&shape, seam[SEAM_TO], &exact));
}
