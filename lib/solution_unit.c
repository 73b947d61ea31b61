/* solution_unit.c - pieced units, solved.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_pieced.h"

#include "unit_inside.h"

struct muslin_unit_spec msl_unit_spec(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    const struct muslin_solution_spec *in = &solution->spec;
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    spec.finished_width = msl_value_of(solution, args[UNIT_WIDTH]);
    spec.finished_height = msl_value_or_none(solution, args[UNIT_HEIGHT]);
    spec.corner = msl_value_or_none(solution, args[UNIT_CORNER]);
    spec.allowance = msl_value_of(solution, MSL_ALLOWANCE);
    spec.take_up = msl_value_of(solution, MSL_TAKE_UP);
    spec.half_addition = in->half_addition;
    spec.quarter_addition = in->quarter_addition;
    spec.trim_room = in->trim_room;
    spec.grid = in->grid;
    spec.tolerance = in->grid_tolerance;
    spec.kind = args[UNIT_KIND];
    spec.method = args[UNIT_METHOD];
    spec.policy = in->policy;
    spec.tip = in->tip;
    spec.direction = in->direction;
    return spec;
}

static const int32_t *piecing_of(const struct muslin_solution *solution, uint32_t node)
{
    return msl_node_args(solution->quilt, node) + UNIT_PIECING;
}

/* A height that the spec leaves to the kind is filled in when it is read. */
void msl_unit_size(struct msl_solving *solving, uint32_t node)
{
    const struct muslin_unit_spec spec = msl_unit_spec(solving->solution, node);
    struct muslin_unit_spec in;
    msl_unit_read(solving->check, &in, &spec);
    msl_pieced_size(solving, node, piecing_of(solving->solution, node), in.finished_width, in.finished_height);
}

/* ---- patches ---------------------------------------------------------------------------------------------------- */

static struct msl_unit_patch draw(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                                  muslin_len *x, muslin_len *y)
{
    struct muslin_unit_spec spec = msl_unit_spec(solution, node);
    spec.finished_height = msl_size_of(solution, node)->height;
    return msl_unit_patch(&spec, msl_node_args(solution->quilt, node)[UNIT_HAND], stage, (int32_t)piece, x, y);
}

int64_t msl_unit_pieces(const struct muslin_solution *solution, uint32_t node)
{
    return piecing_of(solution, node)[PIECING_PIECES];
}

/* Where a raw point is cut off, its patch has one edge more than when it is finished, with no seam along it. */
void msl_unit_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                      struct msl_ring *ring)
{
    const int32_t *piecing = piecing_of(solution, node);
    const struct msl_unit_patch patch = draw(solution, node, piece, stage, ring->x, ring->y);
    ring->fabric = (uint32_t)msl_node_args(solution->quilt, node)[UNIT_FABRICS + patch.region - 1];
    ring->region = patch.region;
    ring->corners = patch.corners;
    ring->exact = patch.exact;
    int32_t edge = msl_first_corner(piecing, piece);
    for (int32_t k = 0; k < patch.corners; k++)
        ring->seam[k] = k == patch.tip ? -1 : msl_piecing_along(piecing, edge++);
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

int64_t msl_unit_seams(const struct muslin_solution *solution, uint32_t node)
{
    return piecing_of(solution, node)[PIECING_SEAMS];
}

/* Where a corner lies, numbered through all pieces. */
static struct msl_place place_of(const struct muslin_solution *solution, uint32_t node, int32_t corner)
{
    const int32_t *piecing = piecing_of(solution, node);
    int32_t piece = 0;
    while (corner >= msl_first_corner(piecing, piece + 1))
        piece++;
    const int32_t place = corner - msl_first_corner(piecing, piece);
    muslin_len x[MSL_UNIT_CORNERS];
    muslin_len y[MSL_UNIT_CORNERS];
    draw(solution, node, piece, MUSLIN_STAGE_FINISHED, x, y);
    return (struct msl_place){ x[place], y[place] };
}

struct msl_seam msl_unit_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const int32_t *seam = msl_piecing_seam(piecing_of(solution, node), k);
    return msl_pieced_seam(solution, seam, place_of(solution, node, seam[SEAM_FROM]),
                           place_of(solution, node, seam[SEAM_TO]));
}
