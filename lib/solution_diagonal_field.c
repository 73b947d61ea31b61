/* solution_diagonal_field.c - what lies where in a field on point, by number and by cell.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_diagonal.h"

#include "surd.h"

/* ---- the field -------------------------------------------------------------------------------------------------- */

muslin_len msl_nearest_point(int64_t whole, int64_t root, int64_t divisor)
{
    struct msl_surd surd = msl_surd_of(whole, root, 2, divisor);
    struct msl_exact exact = msl_surd_exact(&surd);
    return exact.floor + exact.upper_half;
}

int64_t msl_field_straight(const struct msl_field *field, int64_t blocks)
{
    return (blocks - 1) * field->pitch + field->block + field->outside;
}

static void lay_sashes(struct msl_field *field, muslin_len sash)
{
    field->sash = sash;
    field->pitch += sash;
    field->has_frame = field->layout != MUSLIN_POINT_LAYOUT_SASH_INNER;
    if (field->layout == MUSLIN_POINT_LAYOUT_SASH_OUTER) {
        field->outside = 2 * sash;
        return;
    }
    field->outside = field->has_frame ? sash : 0;
}

struct msl_field msl_field_of(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    struct msl_field field = { .columns = args[DIAGONAL_COLUMNS], .rows = args[DIAGONAL_ROWS], .reach = -1 };
    field.args = args;
    field.nodes = args + DIAGONAL_BLOCKS;
    field.layout = args[DIAGONAL_LAYOUT];
    field.seam = msl_seam_of(solution);
    field.block = field.pitch = msl_size_of(solution, (uint32_t)field.nodes[0])->width;
    if (msl_is_sashed(&field))
        lay_sashes(&field, msl_value_of(solution, args[DIAGONAL_SASH]));
    if (args[DIAGONAL_SET_OFF] != 0)
        field.set_off = msl_value_of(solution, args[DIAGONAL_SET_OFF]);
    if (field.set_off > 0) {
        const struct msl_surd runs_on = msl_surd_of(0, field.set_off, 2, 1);
        field.reach = msl_surd_floor(&runs_on) / field.pitch;
    }
    return field;
}

/* ---- lines ------------------------------------------------------------------------------------------------------ */

muslin_len msl_line_at(const struct msl_field *field, int64_t line)
{
    return msl_line_pair(line) * field->pitch - ((line & 1) != 0 ? 0 : field->sash);
}

int64_t msl_turned_u(const struct msl_field *field, int64_t line)
{
    return 2 * (field->columns + field->rows) - 1 - line;
}

int64_t msl_turned_v(const struct msl_field *field, int64_t line)
{
    return 2 * (field->columns - field->rows) + 3 - line;
}

int64_t msl_corner_u(const struct msl_field *field)
{
    return field->has_frame ? 0 : 1;
}

int64_t msl_corner_v(const struct msl_field *field)
{
    return 2 * field->columns + (field->has_frame ? 1 : 0);
}

/* ---- own pieces ------------------------------------------------------------------------------------------------- */

/* In the order of their numbers. What has a seam at its left comes before what has none, see
 * solution_diagonal_seams.c. */
static const uint8_t own_pieces[][2] = {
    { MSL_TRIANGLE, MSL_AT_TOP },      { MSL_TRIANGLE, MSL_AT_RIGHT },
    { MSL_TRIANGLE, MSL_AT_BOTTOM },   { MSL_TRIANGLE, MSL_AT_LEFT },
    { MSL_CORNER, MSL_TOP_LEFT },      { MSL_CORNER, MSL_BOTTOM_RIGHT },
    { MSL_CORNER, MSL_TOP_RIGHT },     { MSL_CORNER, MSL_BOTTOM_LEFT },
    { MSL_STANDING, MSL_AT_TOP },      { MSL_STANDING, MSL_AT_RIGHT },
    { MSL_STANDING, MSL_AT_BOTTOM },   { MSL_STANDING, MSL_AT_LEFT },
    { MSL_LYING, MSL_AT_RIGHT },       { MSL_LYING, MSL_AT_BOTTOM },
    { MSL_LYING, MSL_AT_TOP },         { MSL_LYING, MSL_AT_LEFT },
    { MSL_EDGE_STONE, MSL_AT_RIGHT },  { MSL_EDGE_STONE, MSL_AT_BOTTOM },
    { MSL_EDGE_STONE, MSL_AT_TOP },    { MSL_EDGE_STONE, MSL_AT_LEFT }
};

static int64_t pieces_like(const struct msl_field *field, int32_t form, int32_t side)
{
    const int64_t blocks = side == MSL_AT_TOP || side == MSL_AT_BOTTOM ? field->columns : field->rows;
    switch (form) {
    case MSL_TRIANGLE:
        return blocks - 1;
    case MSL_CORNER:
        return 1;
    case MSL_EDGE_STONE:
        return field->layout == MUSLIN_POINT_LAYOUT_SASH_CUT ? blocks : 0;
    default:
        return field->layout == MUSLIN_POINT_LAYOUT_SASH_INNER ? blocks - 1 : 0;
    }
}

int64_t msl_own_pieces(const struct msl_field *field)
{
    int64_t pieces = 0;
    for (size_t i = 0; i < sizeof own_pieces / sizeof own_pieces[0]; i++)
        pieces += pieces_like(field, own_pieces[i][0], own_pieces[i][1]);
    return pieces;
}

struct msl_own msl_own_piece(const struct msl_field *field, int64_t piece)
{
    size_t i = 0;
    int64_t alike = pieces_like(field, own_pieces[0][0], own_pieces[0][1]);
    while (piece >= alike) {
        piece -= alike;
        i++;
        alike = pieces_like(field, own_pieces[i][0], own_pieces[i][1]);
    }
    return (struct msl_own){ own_pieces[i][0], own_pieces[i][1], piece };
}

int64_t msl_piece_number(const struct msl_field *field, int32_t form, int32_t side, int64_t number)
{
    for (size_t i = 0; own_pieces[i][0] != form || own_pieces[i][1] != side; i++)
        number += pieces_like(field, own_pieces[i][0], own_pieces[i][1]);
    return number;
}

int msl_is_turned(const struct msl_own *own)
{
    if (own->form == MSL_CORNER)
        return own->side == MSL_BOTTOM_RIGHT || own->side == MSL_BOTTOM_LEFT;
    return own->side == MSL_AT_RIGHT || own->side == MSL_AT_BOTTOM;
}

/* Top and bottom change places, as right and left do, and are counted from the other end. */
struct msl_own msl_turned_piece(const struct msl_field *field, struct msl_own own)
{
    own.number = pieces_like(field, own.form, own.side) - 1 - own.number;
    own.side ^= own.form == MSL_CORNER ? 1 : 2;
    return own;
}

/* Side triangle k, from 1, lies in row k at the top and in row -k at the left, and so does the standing sash beside it;
 * the lying one lies under row k and under row 1 - k. Cornerstone k, from 0, lies under row k + 1 and under row -k. */
static int64_t row_unturned(struct msl_own own)
{
    const int is_left = own.side == MSL_AT_LEFT;
    if (own.form == MSL_LYING || own.form == MSL_EDGE_STONE)
        return is_left ? -2 * own.number : 2 * own.number + 2;
    return is_left ? -2 * own.number - 1 : 2 * own.number + 3;
}

int64_t msl_row_of(const struct msl_field *field, struct msl_own own)
{
    if (msl_is_turned(&own))
        return msl_turned_v(field, row_unturned(msl_turned_piece(field, own)) + 1);
    return row_unturned(own);
}

/* ---- parts by number -------------------------------------------------------------------------------------------- */

/* Blocks that have their sashes round them: all others lie between those. */
static int64_t hosts_in(const struct msl_field *field)
{
    if (!msl_is_sashed(field))
        return 0;
    return field->has_frame ? field->columns * field->rows : (field->columns - 1) * (field->rows - 1);
}

/* Cornerstones at the left of main blocks, but for those at the edge; and above them. */
static int64_t stones_at_left(const struct msl_field *field)
{
    return msl_is_sashed(field) ? (field->columns - 1) * field->rows : 0;
}

static int64_t stones_above(const struct msl_field *field)
{
    return msl_is_sashed(field) ? field->columns * (field->rows - 1) : 0;
}

static int64_t frame_stones(const struct msl_field *field)
{
    return field->layout == MUSLIN_POINT_LAYOUT_SASH_OUTER ? 2 * (field->columns + field->rows) : 0;
}

int64_t msl_first_stone(const struct msl_field *field)
{
    return msl_blocks_in(field) + 4 * hosts_in(field);
}

int64_t msl_first_frame_stone(const struct msl_field *field)
{
    return msl_first_stone(field) + stones_at_left(field) + stones_above(field);
}

int64_t msl_field_parts(const struct msl_field *field)
{
    return msl_first_frame_stone(field) + frame_stones(field);
}

/* The cell of main block i, j, also beyond the field, or of the alternate below and to the right of it. */
static struct msl_cell block_cell(int64_t column, int64_t row, int64_t alternate)
{
    return (struct msl_cell){ 2 * (column + row + alternate) + 1, 2 * (column - row) + 1 };
}

static struct msl_cell cell_of_block(const struct msl_field *field, int64_t block)
{
    const int64_t mains = field->columns * field->rows;
    const int64_t alternate = block >= mains;
    const int64_t columns = field->columns - alternate;
    const int64_t number = alternate ? block - mains : block;
    return block_cell(number % columns, number / columns, alternate);
}

static struct msl_cell beside_cell(struct msl_cell cell, int64_t edge)
{
    cell.m += edge == MSL_RIGHT ? 1 : edge == MSL_LEFT ? -1 : 0;
    cell.n += edge == MSL_TOP ? 1 : edge == MSL_BOTTOM ? -1 : 0;
    return cell;
}

static struct msl_cell cell_of_sash(const struct msl_field *field, int64_t sash)
{
    const int64_t host = sash / 4 + (field->has_frame ? 0 : field->columns * field->rows);
    return beside_cell(cell_of_block(field, host), sash % 4);
}

/* At the left tip of main block i, j, or at its upper one. */
static struct msl_cell stone_at_left(int64_t column, int64_t row)
{
    struct msl_cell cell = block_cell(column, row, 0);
    return (struct msl_cell){ cell.m - 1, cell.n - 1 };
}

static struct msl_cell stone_above(int64_t column, int64_t row)
{
    struct msl_cell cell = block_cell(column, row, 0);
    return (struct msl_cell){ cell.m - 1, cell.n + 1 };
}

/* Of the frame: at the right, at the bottom, at the top, at the left; so are those that the edge cuts in half. */
static struct msl_cell cell_of_frame_stone(const struct msl_field *field, int64_t stone)
{
    const int64_t columns = field->columns;
    const int64_t rows = field->rows;
    if (stone < rows)
        return stone_at_left(columns, stone);
    if (stone < rows + columns)
        return stone_above(stone - rows, rows);
    if (stone < rows + 2 * columns)
        return stone_above(stone - rows - columns, 0);
    return stone_at_left(0, stone - rows - 2 * columns);
}

struct msl_cell msl_cell_of(const struct msl_field *field, int64_t part)
{
    const int64_t blocks = msl_blocks_in(field);
    const int64_t left = msl_first_stone(field);
    const int64_t above = left + stones_at_left(field);
    const int64_t frame = msl_first_frame_stone(field);
    if (part < blocks)
        return cell_of_block(field, part);
    if (part < left)
        return cell_of_sash(field, part - blocks);
    if (part < above)
        return stone_at_left((part - left) % (field->columns - 1) + 1, (part - left) / (field->columns - 1));
    if (part < frame)
        return stone_above((part - above) % field->columns, (part - above) / field->columns + 1);
    return cell_of_frame_stone(field, part - frame);
}

int64_t msl_part_beside_block(const struct msl_field *field, int64_t block, enum msl_edge edge)
{
    return field->has_frame ? msl_blocks_in(field) + 4 * block + (int64_t)edge : block;
}

/* ---- parts by cell ---------------------------------------------------------------------------------------------- */

struct msl_cell msl_next_cell(const struct msl_field *field, struct msl_cell cell, int64_t step)
{
    cell.m += msl_is_sashed(field) ? step : 2 * step;
    return cell;
}

int64_t msl_block_in(const struct msl_field *field, struct msl_cell cell)
{
    const int64_t a = msl_line_pair(cell.m);
    const int64_t b = msl_line_pair(cell.n);
    const int64_t alternate = (a + b) & 1;
    const int64_t column = (a + b - alternate) / 2;
    const int64_t row = (a - b - alternate) / 2;
    if (column < 0 || column >= field->columns - alternate || row < 0 || row >= field->rows - alternate)
        return -1;
    return alternate ? field->columns * field->rows + column + row * (field->columns - 1)
                     : msl_block_at(field, column, row);
}

/* The cell seen half a turn on. */
static struct msl_cell turned_cell(const struct msl_field *field, struct msl_cell cell)
{
    return (struct msl_cell){ msl_turned_u(field, cell.m + 1), msl_turned_v(field, cell.n + 1) };
}

/* Whether a cell that is none of its row's own lies at its left. Row b of blocks begins with block |b|, row b of sashes
 * with the one at block b - 1, or -b. */
static int is_at_left(struct msl_cell cell)
{
    const int64_t b = msl_line_pair(cell.n);
    if ((cell.n & 1) != 0)
        return cell.m < 2 * (b < 0 ? -b : b) + 1;
    return cell.m < 2 * (b > 0 ? b : 1 - b);
}

/* What closes a row of blocks or of sashes at this cell. At the left that is a piece at the top or the left, of row 0 a
 * corner; at the right the same half a turn on. */
static int64_t closing(const struct msl_field *field, int32_t form, struct msl_cell cell)
{
    const int at_left = is_at_left(cell);
    const int64_t n = at_left ? cell.n : turned_cell(field, cell).n;
    struct msl_own own = { form, n > 1 ? MSL_AT_TOP : MSL_AT_LEFT, 0 };
    if (n == 1)
        own = (struct msl_own){ MSL_CORNER, MSL_TOP_LEFT, 0 };
    else
        own.number = (n > 1 ? n - 2 : -n) / 2;
    if (!at_left)
        own = msl_turned_piece(field, own);
    return msl_piece_number(field, own.form, own.side, own.number);
}

/* Of the two blocks beside a sash one is its host, a main block where there is a frame, else an alternate: the one at
 * its right or above it, or the other one, `edge` of which it lies. */
static int64_t sash_in(const struct msl_field *field, struct msl_cell cell)
{
    const int stands = (cell.m & 1) == 0;
    const enum msl_edge after = stands ? MSL_RIGHT : MSL_TOP;
    const enum msl_edge before = stands ? MSL_LEFT : MSL_BOTTOM;
    const int64_t is_main = ((msl_line_pair(cell.m) + msl_line_pair(cell.n)) & 1) == 0;
    const int is_after = is_main == field->has_frame;
    const int64_t host = msl_block_in(field, beside_cell(cell, is_after ? after : before));
    const int64_t first = field->has_frame ? 0 : field->columns * field->rows;
    if (host < 0)
        return closing(field, stands ? MSL_STANDING : MSL_LYING, cell);
    return msl_own_pieces(field) + msl_blocks_in(field) + 4 * (host - first) + (int64_t)(is_after ? before : after);
}

/* A cornerstone of the frame, by how those are counted; cut in half they are own pieces, in the same order. */
static int64_t frame_stone(const struct msl_field *field, int64_t number)
{
    if (field->layout == MUSLIN_POINT_LAYOUT_SASH_CUT)
        return msl_piece_number(field, MSL_EDGE_STONE, MSL_AT_RIGHT, number);
    return msl_own_pieces(field) + msl_first_frame_stone(field) + number;
}

static int64_t stone_in(const struct msl_field *field, struct msl_cell cell)
{
    const int64_t a = msl_line_pair(cell.m);
    const int64_t b = msl_line_pair(cell.n);
    const int64_t is_above = (a + b) & 1;
    const int64_t column = (a + b - is_above) / 2;
    const int64_t row = (a - b + is_above) / 2;
    const int64_t first = msl_own_pieces(field) + msl_first_stone(field);
    if (is_above && row == 0)
        return frame_stone(field, field->rows + field->columns + column);
    if (is_above && row == field->rows)
        return frame_stone(field, field->rows + column);
    if (is_above)
        return first + stones_at_left(field) + column + (row - 1) * field->columns;
    if (column == 0)
        return frame_stone(field, field->rows + 2 * field->columns + row);
    if (column == field->columns)
        return frame_stone(field, row);
    return first + column - 1 + row * (field->columns - 1);
}

int64_t msl_item_at(const struct msl_field *field, struct msl_cell cell)
{
    const int is_wide = (cell.m & 1) != 0;
    const int is_high = (cell.n & 1) != 0;
    if (is_wide && is_high) {
        const int64_t block = msl_block_in(field, cell);
        return block < 0 ? closing(field, MSL_TRIANGLE, cell) : msl_own_pieces(field) + block;
    }
    return is_wide || is_high ? sash_in(field, cell) : stone_in(field, cell);
}
