/* quilt_field.c - fields that are not upright: blocks on point, and rows of 60 degree pieces.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_store.h"

enum {
    DIAGONAL_SPEC_LEAST = sizeof(struct muslin_quilt_diagonal_spec),
    SIXTY_SPEC_LEAST = sizeof(struct muslin_quilt_sixty_spec),
    SIXTY_PIECE_SPEC_LEAST = sizeof(struct muslin_quilt_sixty_piece_spec)
};
enum { POINT_BLOCKS_MOST = 32768, SIXTY_MOST = 1048576, PIECE_CELLS_MOST = 3 };

/* ---- blocks on point -------------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_diagonal_spec_init(struct muslin_quilt_diagonal_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_diagonal_spec initial = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, DIAGONAL_SPEC_LEAST);
}

/* Columns and rows, and as many blocks as they take, alternates included: at most 2^31 - 2^17 + 2. */
static void want_blocks(struct msl_check *check, const struct muslin_quilt_diagonal_spec *in, size_t n)
{
    msl_want_between(check, MUSLIN_ARG_COLUMNS, in->columns, 1, POINT_BLOCKS_MOST);
    msl_want_between(check, MUSLIN_ARG_QUILT_ROWS, in->rows, 1, POINT_BLOCKS_MOST);
    if (check->status != MUSLIN_OK)
        return;
    int64_t blocks = in->columns * in->rows + (in->columns - 1) * (in->rows - 1);
    msl_want_between(check, MUSLIN_ARG_CHILDREN, (int64_t)n, blocks, blocks);
}

/* An id where the layout asks for one, 0 where it has none; members that share a name are told apart by their place. */
static void want_given(struct msl_check *check, int32_t argument, int64_t at, muslin_id id, int is_asked_for)
{
    if (check->status != MUSLIN_OK || (id != 0) == is_asked_for)
        return;
    check->at = at;
    msl_fail(check, MUSLIN_ERR_RANGE, argument, id, is_asked_for);
}

/* As muslin_setting_point() has it: where something is cut at the edge itself, nothing floats. */
static void want_layout(struct msl_check *check, const struct muslin_quilt_diagonal_spec *in)
{
    const int sashed = in->layout != MUSLIN_POINT_LAYOUT_PLAIN;
    msl_want_choice(check, MUSLIN_ARG_SETTING_LAYOUT, in->layout, MUSLIN_POINT_LAYOUT_PLAIN,
                    MUSLIN_POINT_LAYOUT_SASH_INNER);
    msl_want_pad(check, in->pad);
    if (in->layout == MUSLIN_POINT_LAYOUT_SASH_CUT || in->layout == MUSLIN_POINT_LAYOUT_SASH_INNER)
        want_given(check, MUSLIN_ARG_MEASURE, 0, in->set_off, 0);
    want_given(check, MUSLIN_ARG_MEASURE, 1, in->sash, sashed);
    want_given(check, MUSLIN_ARG_FABRIC, 2, in->sash_fabric, sashed);
    if (!sashed)
        want_given(check, MUSLIN_ARG_FABRIC, 3, in->cornerstone, 0);
}

/* What such members name; id 0 stays 0 where it may. */
static int32_t named(struct msl_check *check, const struct muslin_quilt *quilt, int32_t sort, int64_t at, muslin_id id,
                     int may_be_none)
{
    const int32_t argument = sort == MUSLIN_SORT_FABRIC ? MUSLIN_ARG_FABRIC : MUSLIN_ARG_MEASURE;
    check->at = at;
    uint32_t number = may_be_none ? msl_want_id_or(check, quilt, sort, argument, id, 0)
                                  : msl_want_id(check, quilt, sort, argument, id);
    check->at = 0;
    return (int32_t)number;
}

/* All but the blocks and what the sashes are made of. */
static void put_diagonal(struct msl_check *check, const struct muslin_quilt *quilt, int32_t *args,
                         const struct muslin_quilt_diagonal_spec *in)
{
    args[DIAGONAL_COLUMNS] = (int32_t)in->columns;
    args[DIAGONAL_ROWS] = (int32_t)in->rows;
    args[DIAGONAL_LAYOUT] = in->layout;
    args[DIAGONAL_SIDE_FABRIC] = named(check, quilt, MUSLIN_SORT_FABRIC, 0, in->side_fabric, 0);
    args[DIAGONAL_CORNER_FABRIC] = named(check, quilt, MUSLIN_SORT_FABRIC, 1, in->corner_fabric, 0);
    args[DIAGONAL_SASH_FABRIC] = named(check, quilt, MUSLIN_SORT_FABRIC, 2, in->sash_fabric, 1);
    args[DIAGONAL_CORNERSTONE] = named(check, quilt, MUSLIN_SORT_FABRIC, 3, in->cornerstone, 1);
    args[DIAGONAL_SET_OFF] = named(check, quilt, MUSLIN_SORT_MEASURE, 0, in->set_off, 1);
    args[DIAGONAL_SASH] = named(check, quilt, MUSLIN_SORT_MEASURE, 1, in->sash, 1);
    if (args[DIAGONAL_CORNERSTONE] == 0)
        args[DIAGONAL_CORNERSTONE] = args[DIAGONAL_SASH_FABRIC];
}

/* Where nothing lies outside the corner blocks, whole sashes lie round alternates. */
static int has_whole_sashes(const int32_t *args)
{
    const int has_alternates = args[DIAGONAL_COLUMNS] > 1 && args[DIAGONAL_ROWS] > 1;
    return args[DIAGONAL_LAYOUT] != MUSLIN_POINT_LAYOUT_SASH_INNER || has_alternates;
}

/* They lie between two blocks side by side or above each other, and outside. */
static int has_whole_cornerstones(const int32_t *args)
{
    const int has_one_block = args[DIAGONAL_COLUMNS] == 1 && args[DIAGONAL_ROWS] == 1;
    return args[DIAGONAL_LAYOUT] == MUSLIN_POINT_LAYOUT_SASH_OUTER || !has_one_block;
}

/* Sashes are as long as the first block is wide. Returns how many patches there are. */
static uint32_t add_sash_patches(struct msl_check *check, struct muslin_quilt *quilt, const int32_t *args,
                                 muslin_id first_block, uint32_t *patches)
{
    const uint32_t width = (uint32_t)args[DIAGONAL_SASH];
    const uint32_t fabric = (uint32_t)args[DIAGONAL_SASH_FABRIC];
    uint32_t block = msl_want_id(check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, first_block);
    uint32_t count = 0;
    if (args[DIAGONAL_LAYOUT] == MUSLIN_POINT_LAYOUT_PLAIN || check->status != MUSLIN_OK)
        return 0;
    if (has_whole_sashes(args)) {
        uint32_t length = msl_add_extent(check, quilt, block, MUSLIN_AXIS_ACROSS);
        patches[count++] = msl_add_patch(check, quilt, fabric, length, width);
        patches[count++] = msl_add_patch(check, quilt, fabric, width, length);
    }
    if (has_whole_cornerstones(args))
        patches[count++] = msl_add_patch(check, quilt, (uint32_t)args[DIAGONAL_CORNERSTONE], width, width);
    return count;
}

static uint32_t add_diagonal(struct msl_check *check, struct muslin_quilt *quilt, const int32_t *given,
                             const muslin_id *blocks, uint32_t n)
{
    uint32_t patches[DIAGONAL_SASH_PATCHES] = { 0 };
    const uint32_t more = add_sash_patches(check, quilt, given, blocks[0], patches);
    int32_t *args = msl_begin(check, quilt, DIAGONAL_BLOCKS + n + more);
    if (args == NULL)
        return 0;
    for (uint32_t i = 0; i < DIAGONAL_BLOCKS; i++)
        args[i] = given[i];
    for (uint32_t i = 0; check->status == MUSLIN_OK && i < n; i++) {
        check->at = i;
        args[DIAGONAL_BLOCKS + i] = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, blocks[i]);
    }
    if (check->status != MUSLIN_OK)
        return 0;
    check->at = 0;
    for (uint32_t i = 0; i < more; i++)
        args[DIAGONAL_BLOCKS + n + i] = (int32_t)patches[i];
    return msl_end_node(check, quilt, MUSLIN_NODE_DIAGONAL, DIAGONAL_BLOCKS + n + more);
}

muslin_status muslin_quilt_diagonal(struct muslin_quilt *quilt, const struct muslin_quilt_diagonal_spec *spec,
                                    const muslin_id *blocks, size_t n, muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_diagonal_spec in;
    int32_t args[DIAGONAL_BLOCKS];
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, DIAGONAL_SPEC_LEAST, 0, spec);
    msl_want_children(&check, blocks, n);
    if (check.status != MUSLIN_OK)
        return check.status;
    want_blocks(&check, &in, n);
    want_layout(&check, &in);
    put_diagonal(&check, quilt, args, &in);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    return msl_give_node(&check, quilt, mark, add_diagonal(&check, quilt, args, blocks, (uint32_t)n), out);
}

/* ---- rows of 60 degree pieces ----------------------------------------------------------------------------------- */

muslin_status muslin_quilt_sixty_spec_init(struct muslin_quilt_sixty_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_sixty_spec initial = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, SIXTY_SPEC_LEAST);
}

muslin_status muslin_quilt_sixty_piece_spec_init(struct muslin_quilt_sixty_piece_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_sixty_piece_spec initial = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, SIXTY_PIECE_SPEC_LEAST);
}

static void want_sixty(struct msl_check *check, const struct muslin_quilt_sixty_spec *in)
{
    msl_want_between(check, MUSLIN_ARG_CELLS, in->cells, 1, SIXTY_MOST);
    msl_want_between(check, MUSLIN_ARG_QUILT_ROWS, in->rows, 1, SIXTY_MOST);
    msl_want_choice(check, MUSLIN_ARG_START, in->first, MUSLIN_SIXTY_FIRST_ON_SIDE, MUSLIN_SIXTY_FIRST_ON_POINT);
    msl_want_pad(check, in->pad);
}

static void put_sixty(struct msl_check *check, const struct muslin_quilt *quilt, int32_t *args,
                      const struct muslin_quilt_sixty_spec *in)
{
    args[SIXTY_CELLS] = (int32_t)in->cells;
    args[SIXTY_ROWS] = (int32_t)in->rows;
    args[SIXTY_HEIGHT] = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, in->height);
    args[SIXTY_END_FABRIC] = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, in->end_fabric);
    args[SIXTY_FIRST] = in->first;
}

/* How far rows are filled: whole rows, and cells of the next one. */
struct filled {
    int64_t rows;
    int64_t cells;
};

/* One piece: it must fit into what is left of its row; nothing fits when all rows are full. */
static void put_piece(struct msl_check *check, const struct muslin_quilt *quilt, int32_t *args,
                      const struct muslin_quilt_sixty_spec *in, const struct muslin_quilt_sixty_piece_spec *piece,
                      struct filled *filled)
{
    int64_t left = filled->rows < in->rows ? in->cells - filled->cells : 0;
    msl_want_between(check, MUSLIN_ARG_CELLS, piece->cells, 1, left < PIECE_CELLS_MOST ? left : PIECE_CELLS_MOST);
    args[0] = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, piece->fabric);
    if (check->status != MUSLIN_OK)
        return;
    args[1] = (int32_t)piece->cells;
    filled->cells += piece->cells;
    if (filled->cells == in->cells) {
        filled->rows++;
        filled->cells = 0;
    }
}

/* All pieces, two arguments each; the last one must fill the last row. */
static void put_pieces(struct msl_check *check, const struct muslin_quilt *quilt, int32_t *args,
                       const struct muslin_quilt_sixty_spec *in, const struct muslin_quilt_sixty_piece_spec *pieces,
                       size_t row_size, size_t n)
{
    struct filled filled = { 0 };
    for (size_t i = 0; check->status == MUSLIN_OK && i < n; i++) {
        struct muslin_quilt_sixty_piece_spec piece;
        const void *row = msl_row_to_read(check, pieces, row_size, i);
        msl_read_struct(check, MUSLIN_ARG_ROWS, &piece, sizeof piece, SIXTY_PIECE_SPEC_LEAST, 0, row);
        if (check->status == MUSLIN_OK)
            put_piece(check, quilt, args + 2 * i, in, &piece, &filled);
    }
    check->at = (int64_t)n;
    if (filled.rows < in->rows) /* at least one more is needed */
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES, (int64_t)n, (int64_t)n + 1);
}

muslin_status muslin_quilt_sixty(struct muslin_quilt *quilt, const struct muslin_quilt_sixty_spec *spec,
                                 const struct muslin_quilt_sixty_piece_spec *pieces, size_t row_size, size_t n,
                                 muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_sixty_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, SIXTY_SPEC_LEAST, 0, spec);
    msl_want_pointer(&check, MUSLIN_ARG_ROWS, pieces);
    msl_want_row_size(&check, row_size, SIXTY_PIECE_SPEC_LEAST);
    if (check.status != MUSLIN_OK)
        return check.status;
    want_sixty(&check, &in);
    if (check.status != MUSLIN_OK)
        return check.status;
    int64_t most = msl_lesser(in.cells * in.rows, MUSLIN_COUNT_MAX / 2);
    msl_want_between(&check, MUSLIN_ARG_PIECES, n > MUSLIN_COUNT_MAX ? MUSLIN_COUNT_MAX : (int64_t)n, 1, most);
    struct msl_mark mark = msl_mark(quilt);
    uint32_t count = SIXTY_PIECES + 2 * (uint32_t)n;
    int32_t *args = msl_begin(&check, quilt, count);
    if (args == NULL)
        return check.status;
    put_sixty(&check, quilt, args, &in);
    put_pieces(&check, quilt, args + SIXTY_PIECES, &in, pieces, row_size, n);
    if (check.status != MUSLIN_OK)
        return check.status;
    check.at = 0;
    return msl_give_node(&check, quilt, mark, msl_end_node(&check, quilt, MUSLIN_NODE_SIXTY, count), out);
}
