/* solution_diagonal.c - blocks on point, solved.
 *
 * SPDX-License-Identifier: MIT
 *
 * Sizes, the assembly check and where parts lie. Of the turned frame solution_diagonal.h tells. */
#include "solution_diagonal.h"

/* ---- the assembly check ----------------------------------------------------------------------------------------- */

static int64_t absolute(int64_t value)
{
    return value < 0 ? -value : value;
}

/* A block that is not B x B, by the side that differs more. */
static void check_square(struct msl_solving *solving, uint32_t node, const struct msl_field *field, int64_t k,
                         const struct msl_size *size)
{
    const struct msl_size *first = msl_size_of(solving->solution, (uint32_t)field->nodes[0]);
    struct msl_meeting meeting = { .second = k,
                                   .first_size = field->block,
                                   .second_size = size->width,
                                   .first_pieces = first->along[MSL_TOP],
                                   .second_pieces = size->along[MSL_TOP] };
    if (absolute(size->height - field->block) > absolute(size->width - field->block)) {
        meeting.second_size = size->height;
        meeting.second_pieces = size->along[MSL_LEFT];
    }
    if (absolute(meeting.second_size - field->block) > solving->solution->spec.ease)
        msl_add_misfit(solving, node, &meeting, MUSLIN_MISFIT_NOT_SQUARE);
    else
        msl_check_edges(solving, node, &meeting);
}

static void check_allowance(struct msl_solving *solving, uint32_t node, int64_t first, int64_t second,
                            muslin_len first_edge, muslin_len second_edge)
{
    const struct msl_meeting meeting = {
        .first = first, .second = second, .first_edge = first_edge, .second_edge = second_edge
    };
    msl_check_edges(solving, node, &meeting);
}

/* The allowance of a block's edge; all but blocks (-1) have the quilt's. */
static muslin_len edge_of(const struct muslin_solution *solution, const struct msl_field *field, int64_t block,
                          enum msl_edge edge)
{
    if (block < 0)
        return msl_value_of(solution, MSL_ALLOWANCE);
    return msl_size_of(solution, (uint32_t)field->nodes[block])->edge[edge];
}

/* The block beside a block, so many blocks along u and v; -1: none, as where sashes lie between. */
static int64_t block_beside(const struct msl_field *field, int64_t k, int64_t along_u, int64_t along_v)
{
    const struct msl_cell cell = msl_cell_of(field, k);
    const struct msl_cell beside = { cell.m + 2 * along_u, cell.n + 2 * along_v };
    return msl_is_sashed(field) ? -1 : msl_block_in(field, beside);
}

/* Where a block is sewn to what lies left of it and above, and to what is no block right of it and below. */
static void check_allowances(struct msl_solving *solving, uint32_t node, const struct msl_field *field, int64_t k)
{
    const struct muslin_solution *s = solving->solution;
    const int64_t left = block_beside(field, k, -1, 0);
    const int64_t up = block_beside(field, k, 0, 1);
    check_allowance(solving, node, left, k, edge_of(s, field, left, MSL_RIGHT), edge_of(s, field, k, MSL_LEFT));
    check_allowance(solving, node, up, k, edge_of(s, field, up, MSL_BOTTOM), edge_of(s, field, k, MSL_TOP));
    if (block_beside(field, k, 1, 0) < 0)
        check_allowance(solving, node, k, -1, edge_of(s, field, k, MSL_RIGHT), edge_of(s, field, -1, MSL_LEFT));
    if (block_beside(field, k, 0, -1) < 0)
        check_allowance(solving, node, k, -1, edge_of(s, field, k, MSL_BOTTOM), edge_of(s, field, -1, MSL_TOP));
}

/* ---- size ------------------------------------------------------------------------------------------------------- */

/* Seams that a line crosses in the blocks along a row or a column, tip to tip: `count` of them from block `first`. */
static int64_t seams_along(const struct muslin_solution *solution, const struct msl_field *field, int64_t first,
                           int64_t step, int64_t count)
{
    int64_t seams = 0;
    for (int64_t i = 0; i < count; i++) {
        const struct msl_size *size = msl_size_of(solution, (uint32_t)field->nodes[first + i * step]);
        seams += size->across + size->down;
    }
    return seams;
}

static int64_t most_along(const struct muslin_solution *solution, const struct msl_field *field, int across)
{
    int64_t most = 0;
    for (int32_t alternate = 0; alternate < 2; alternate++) {
        const int64_t columns = field->columns - alternate;
        const int64_t rows = field->rows - alternate;
        const int64_t first = alternate ? field->columns * field->rows : 0;
        for (int64_t k = 0; k < (across ? rows : columns); k++) {
            const int64_t seams = across ? seams_along(solution, field, first + k * columns, 1, columns)
                                         : seams_along(solution, field, first + k, columns, rows);
            most = seams > most ? seams : most;
        }
    }
    return most;
}

/* Pieces along an outer edge: corners, what is cut off there, and side triangles that the corners' seams do not cut off
 * from it. */
static int64_t along_edge(const struct msl_field *field, int64_t blocks)
{
    if (field->layout == MUSLIN_POINT_LAYOUT_SASH_CUT)
        return 2 * blocks + 1;
    if (field->layout == MUSLIN_POINT_LAYOUT_SASH_INNER)
        return 3 * blocks - 1;
    if (field->reach < 0)
        return blocks + 1;
    return blocks + 1 - (field->reach < blocks ? field->reach : blocks - 1);
}

/* Lines that run on beyond the tips along one side of n blocks, P apart and f sqrt 2 long: as many as a line from side
 * to side can meet there. */
static int64_t beyond_tips(const struct msl_field *field, int64_t blocks)
{
    return field->reach < blocks ? field->reach + 1 : blocks;
}

/* The field's own seams that a line through `blocks` blocks tip to tip crosses, `beside` of them from edge to edge
 * across it: two where it comes from one piece into the next, and one at each end; where sashes end at the edge two, if
 * there are any; with a set-off more, beyond the tips. */
static int64_t own_crossed(const struct msl_field *field, int64_t blocks, int64_t beside)
{
    switch (field->layout) {
    case MUSLIN_POINT_LAYOUT_PLAIN:
        return 2 * blocks + 2 * beyond_tips(field, beside);
    case MUSLIN_POINT_LAYOUT_SASH_OUTER:
        return 4 * blocks + 2 + 2 * beyond_tips(field, beside);
    case MUSLIN_POINT_LAYOUT_SASH_CUT:
        return 4 * blocks;
    default:
        return 4 * blocks - (beside > 1 ? 0 : 2);
    }
}

/* Inside a block a line crosses all seams, those across it and those down it. */
static void count_crossed(const struct muslin_solution *solution, const struct msl_field *field, struct msl_size *size)
{
    size->across = own_crossed(field, field->columns, field->rows) + most_along(solution, field, 1);
    size->down = own_crossed(field, field->rows, field->columns) + most_along(solution, field, 0);
}

/* In one layout blocks must leave something of the triangles, which lose a sash. */
static void want_block(struct msl_solving *solving, const struct msl_field *field)
{
    const muslin_len least = field->layout == MUSLIN_POINT_LAYOUT_SASH_INNER ? field->sash + 1 : 1;
    msl_want_between(solving->check, MUSLIN_ARG_BLOCK_WIDTH, field->block, least, MUSLIN_SIZE_MAX);
}

void msl_diagonal_size(struct msl_solving *solving, uint32_t node)
{
    struct muslin_solution *s = solving->solution;
    const struct msl_field field = msl_field_of(s, node);
    const int64_t blocks = msl_blocks_in(&field);
    const int64_t parts = msl_field_parts(&field);
    struct msl_size *size = msl_size_of(s, node);
    want_block(solving, &field);
    msl_want_between(solving->check, MUSLIN_ARG_PIECES, parts, 1, MUSLIN_COUNT_MAX);
    size->slots = (uint32_t)s->slots.used;
    size->patches = msl_own_pieces(&field);
    for (int64_t k = 0; solving->check->status == MUSLIN_OK && k < parts; k++) {
        const struct msl_size *part = msl_size_of(s, msl_diagonal_part(s, node, k).node);
        msl_add_slot(solving, 0, size->patches);
        size->patches += part->patches;
        if (k < blocks) {
            check_square(solving, node, &field, k, part);
            check_allowances(solving, node, &field, k);
        }
    }
    size->width = msl_nearest_point(2 * field.set_off, msl_field_straight(&field, field.columns), 1);
    size->height = msl_nearest_point(2 * field.set_off, msl_field_straight(&field, field.rows), 1);
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++)
        size->edge[edge] = msl_value_of(s, MSL_ALLOWANCE);
    size->along[MSL_TOP] = size->along[MSL_BOTTOM] = along_edge(&field, field.columns);
    size->along[MSL_LEFT] = size->along[MSL_RIGHT] = along_edge(&field, field.rows);
    count_crossed(s, &field, size);
}

/* ---- parts ------------------------------------------------------------------------------------------------------ */

int64_t msl_diagonal_pieces(const struct muslin_solution *solution, uint32_t node)
{
    const struct msl_field field = msl_field_of(solution, node);
    return msl_own_pieces(&field);
}

int64_t msl_diagonal_parts(const struct muslin_solution *solution, uint32_t node)
{
    const struct msl_field field = msl_field_of(solution, node);
    return msl_field_parts(&field);
}

/* The patch that fills a cell: a lying sash, a standing one, then a cornerstone, the first where there are no whole
 * sashes. */
static int64_t patch_in(const struct msl_field *field, struct msl_cell cell)
{
    const int is_wide = (cell.m & 1) != 0;
    const int is_high = (cell.n & 1) != 0;
    const int64_t sashes = msl_first_stone(field) > msl_blocks_in(field) ? 2 : 0;
    return is_wide ? 0 : is_high ? 1 : sashes;
}

struct msl_part msl_diagonal_part(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct msl_field field = msl_field_of(solution, node);
    const struct msl_cell cell = msl_cell_of(&field, k);
    const int64_t blocks = msl_blocks_in(&field);
    const int32_t part = field.nodes[k < blocks ? k : blocks + patch_in(&field, cell)];
    return (struct msl_part){ (uint32_t)part, 0, msl_line_at(&field, cell.m), msl_line_at(&field, cell.n), 1 };
}

void msl_diagonal_point(const struct muslin_solution *solution, uint32_t node, muslin_len u, muslin_len v,
                        muslin_len *x, muslin_len *y)
{
    const struct msl_field field = msl_field_of(solution, node);
    const muslin_len lowest = 2 * (field.rows - 1) * field.pitch + field.block;
    *x = msl_nearest_point(2 * field.set_off, u + v + field.outside, 2);
    *y = msl_nearest_point(2 * field.set_off, v - u + lowest + field.outside, 2);
}
