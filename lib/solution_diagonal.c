/* solution_diagonal.c - blocks on point, solved.
 *
 * SPDX-License-Identifier: MIT
 *
 * The turned frame. Its origin is the left tip of the first row's first block; u runs down to the right along that
 * block's lower left edge, v up to the right along its upper left one. In it everything is upright: block i, j of the
 * c x r (column i from the left, row j from the top) lies at u = (i + j) B, v = (i - j) B, alternate i, j at
 * u = (i + j + 1) B, v = (i - j) B. In the field, f the set-off,
 *
 *     x = f + (u + v) / sqrt 2        y = f + ((2 r - 1) B + v - u) / sqrt 2
 *
 * Rows. A row is what lies between v = b B and (b + 1) B, from b = c - 1, in the upper right, to b = 1 - r. It begins
 * and ends with a setting triangle, but for the row of the first block, b = 0, which begins at the upper left corner,
 * and row b = c - r, which ends at the lower right one.
 *
 * Where pieces end. Rows are sewn with straight seams, so between two setting triangles, beyond the tip of a block,
 * the seam of the rows runs straight on for f sqrt 2, to the outside. Corners come last: upper left and lower right
 * along u = 0 and u = (c + r - 1) B, from outside to outside, across the ends of all rows that reach so far; then upper
 * right and lower left along v = c B and v = (1 - r) B, across the first two where these reach so far. Each piece is
 * what the lines leave of its triangle; muslin_setting_point() says how large the whole one is. A line k blocks from a
 * tip is reached by what runs on from there when k B < f sqrt 2: when f > 0 and k <= g = floor(f sqrt 2 / B).
 *
 * Half a turn of the field takes u to (c + r - 1) B - u and v to (c - r + 1) B - v, right to left, bottom to top. */
#include "solution_inside.h"

#include "surd.h"

/* ---- the field -------------------------------------------------------------------------------------------------- */

struct field {
    int64_t columns;
    int64_t rows;
    muslin_len block;   /* B */
    muslin_len set_off; /* f */
    int64_t reach;      /* g */
    muslin_len seam;    /* E, twice what a raw edge stands out */
    const int32_t *nodes;
};

static struct field field_of(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    struct field field = { args[DIAGONAL_COLUMNS], args[DIAGONAL_ROWS], 0, 0, 0, msl_seam_of(solution),
                           args + DIAGONAL_BLOCKS };
    field.block = msl_size_of(solution, (uint32_t)field.nodes[0])->width;
    if (args[DIAGONAL_SET_OFF] != 0) {
        field.set_off = msl_value_of(solution, args[DIAGONAL_SET_OFF]);
        const struct msl_surd runs_on = msl_surd_of(0, field.set_off, 2, 1);
        field.reach = msl_surd_floor(&runs_on) / field.block;
    }
    return field;
}

static int64_t blocks_in(const struct field *field)
{
    return field->columns * field->rows + (field->columns - 1) * (field->rows - 1);
}

/* Nearest tick to (whole + root sqrt 2) / divisor. */
static muslin_len nearest(int64_t whole, int64_t root, int64_t divisor)
{
    struct msl_surd surd = msl_surd_of(whole, root, 2, divisor);
    struct msl_exact exact = msl_surd_exact(&surd);
    return exact.floor + exact.upper_half;
}

static muslin_len side_of(const struct field *field, int64_t blocks)
{
    return nearest(2 * field->set_off, blocks * field->block, 1);
}

/* Where a block lies by its number: whole blocks along u and v, and its column and row. */
struct place {
    int64_t u;
    int64_t v;
    int64_t column;
    int64_t row;
    int32_t alternate;
};

static struct place place_of(const struct field *field, int64_t k)
{
    const int64_t blocks = field->columns * field->rows;
    const int32_t alternate = k >= blocks;
    const int64_t columns = field->columns - alternate;
    const int64_t number = alternate ? k - blocks : k;
    struct place place = { 0, 0, number % columns, number / columns, alternate };
    place.u = place.column + place.row + alternate;
    place.v = place.column - place.row;
    return place;
}

static int64_t block_at(const struct field *field, int64_t column, int64_t row)
{
    return column + row * field->columns;
}

static int64_t alternate_at(const struct field *field, int64_t column, int64_t row)
{
    return field->columns * field->rows + column + row * (field->columns - 1);
}

/* ---- own pieces by number --------------------------------------------------------------------------------------- */

/* Side triangles at the top from the left, at the right from the top, at the bottom from the left, at the left from the
 * top; then corners in the order in which they are sewn on. */
enum side { SIDE_TOP, SIDE_RIGHT, SIDE_BOTTOM, SIDE_LEFT, CORNER_TOP_LEFT, CORNER_BOTTOM_RIGHT, CORNER_TOP_RIGHT,
            CORNER_BOTTOM_LEFT };

static int64_t first_of(const struct field *field, enum side side)
{
    const int64_t across = field->columns - 1;
    const int64_t down = field->rows - 1;
    switch (side) {
    case SIDE_TOP:
        return 0;
    case SIDE_RIGHT:
        return across;
    case SIDE_BOTTOM:
        return across + down;
    case SIDE_LEFT:
        return 2 * across + down;
    default:
        return 2 * across + 2 * down + (int64_t)side - CORNER_TOP_LEFT;
    }
}

static enum side side_with(const struct field *field, int64_t piece)
{
    enum side side = CORNER_BOTTOM_LEFT;
    while (first_of(field, side) > piece)
        side--;
    return side;
}

static int64_t pieces_of(const struct field *field)
{
    return 2 * field->columns + 2 * field->rows;
}

int64_t msl_diagonal_pieces(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    return 2 * (int64_t)args[DIAGONAL_COLUMNS] + 2 * (int64_t)args[DIAGONAL_ROWS];
}

/* ---- what lies beside a block ----------------------------------------------------------------------------------- */

/* The neighbours of blocks, numbered as msl_seam has it: own pieces, then blocks. */
static int64_t left_of(const struct field *field, const struct place *place)
{
    const int64_t pieces = pieces_of(field);
    if (place->alternate)
        return pieces + block_at(field, place->column, place->row);
    if (place->column > 0 && place->row > 0)
        return pieces + alternate_at(field, place->column - 1, place->row - 1);
    if (place->column > 0)
        return first_of(field, SIDE_TOP) + place->column - 1;
    return place->row > 0 ? first_of(field, SIDE_LEFT) + place->row - 1 : first_of(field, CORNER_TOP_LEFT);
}

static int64_t above(const struct field *field, const struct place *place)
{
    const int64_t pieces = pieces_of(field);
    const int last = place->column == field->columns - 1;
    if (place->alternate)
        return pieces + block_at(field, place->column + 1, place->row);
    if (!last && place->row > 0)
        return pieces + alternate_at(field, place->column, place->row - 1);
    if (!last)
        return first_of(field, SIDE_TOP) + place->column;
    return place->row > 0 ? first_of(field, SIDE_RIGHT) + place->row - 1 : first_of(field, CORNER_TOP_RIGHT);
}

/* ---- size ------------------------------------------------------------------------------------------------------- */

static int64_t absolute(int64_t value)
{
    return value < 0 ? -value : value;
}

/* A block that is not B x B, by the side that differs more. */
static void check_square(struct msl_solving *solving, uint32_t node, const struct field *field, int64_t k,
                         const struct msl_size *size)
{
    const struct msl_size *first = msl_size_of(solving->solution, (uint32_t)field->nodes[0]);
    struct msl_meeting meeting = { 0, k, field->block, size->width, 0, 0, first->along[MSL_TOP], size->along[MSL_TOP] };
    if (absolute(size->height - field->block) > absolute(size->width - field->block)) {
        meeting.second_size = size->height;
        meeting.second_pieces = size->along[MSL_LEFT];
    }
    if (absolute(meeting.second_size - field->block) > solving->solution->spec.ease)
        msl_add_misfit(solving, node, &meeting, MUSLIN_MISFIT_NOT_SQUARE);
    else
        msl_check_edges(solving, node, &meeting);
}

/* The allowance of what lies beside a block, at the edge where it does: a setting triangle has the quilt's. */
static muslin_len edge_beside(const struct muslin_solution *solution, const struct field *field, int64_t beside,
                              enum msl_edge edge)
{
    const int64_t pieces = pieces_of(field);
    if (beside < pieces)
        return msl_value_of(solution, MSL_ALLOWANCE);
    return msl_size_of(solution, (uint32_t)field->nodes[beside - pieces])->edge[edge];
}

static void check_allowance(struct msl_solving *solving, uint32_t node, int64_t first, int64_t second,
                            muslin_len first_edge, muslin_len second_edge)
{
    const struct msl_meeting meeting = { first, second, 0, 0, first_edge, second_edge, 0, 0 };
    msl_check_edges(solving, node, &meeting);
}

/* A child's number; setting triangles are no children. */
static int64_t child_of(const struct field *field, int64_t beside)
{
    return beside < pieces_of(field) ? -1 : beside - pieces_of(field);
}

/* Where a block is sewn to what lies left of it and above, and to the setting triangles right of it and below. */
static void check_allowances(struct msl_solving *solving, uint32_t node, const struct field *field, int64_t k,
                             const struct msl_size *size)
{
    const struct muslin_solution *s = solving->solution;
    const struct place place = place_of(field, k);
    const muslin_len usual = msl_value_of(s, MSL_ALLOWANCE);
    const int64_t left = left_of(field, &place);
    const int64_t up = above(field, &place);
    check_allowance(solving, node, child_of(field, left), k, edge_beside(s, field, left, MSL_RIGHT),
                    size->edge[MSL_LEFT]);
    check_allowance(solving, node, child_of(field, up), k, edge_beside(s, field, up, MSL_BOTTOM), size->edge[MSL_TOP]);
    if (place.alternate)
        return;
    const int lowest = place.row == field->rows - 1;
    if (lowest || place.column == field->columns - 1)
        check_allowance(solving, node, k, -1, size->edge[MSL_RIGHT], usual);
    if (lowest || place.column == 0)
        check_allowance(solving, node, k, -1, size->edge[MSL_BOTTOM], usual);
}

/* Seams that a line crosses in the blocks along a row or a column, tip to tip: `count` of them from block `first`. */
static int64_t seams_along(const struct muslin_solution *solution, const struct field *field, int64_t first,
                           int64_t step, int64_t count)
{
    int64_t seams = 0;
    for (int64_t i = 0; i < count; i++) {
        const struct msl_size *size = msl_size_of(solution, (uint32_t)field->nodes[first + i * step]);
        seams += size->across + size->down;
    }
    return seams;
}

static int64_t most_along(const struct muslin_solution *solution, const struct field *field, int across)
{
    int64_t most = 0;
    for (int32_t alternate = 0; alternate < 2; alternate++) {
        const int64_t columns = field->columns - alternate;
        const int64_t rows = field->rows - alternate;
        const int64_t first = alternate ? alternate_at(field, 0, 0) : 0;
        for (int64_t k = 0; k < (across ? rows : columns); k++) {
            const int64_t seams = across ? seams_along(solution, field, first + k * columns, 1, columns)
                                         : seams_along(solution, field, first + k, columns, rows);
            most = seams > most ? seams : most;
        }
    }
    return most;
}

/* Pieces along an outer edge: corners, and side triangles that the corners' seams do not cut off from it. */
static int64_t along_edge(const struct field *field, int64_t blocks)
{
    return blocks + 1 - (field->reach < blocks ? field->reach : blocks - 1);
}

/* Lines that run on beyond the tips along one side of n blocks, one block apart and f sqrt 2 long: as many as a line
 * from side to side can meet there. */
static int64_t beyond_tips(const struct field *field, int64_t blocks)
{
    if (field->set_off == 0)
        return 0;
    return field->reach < blocks ? field->reach + 1 : blocks;
}

/* A line through n blocks tip to tip crosses two seams where it comes from one into the next, and one at each end: 2 n
 * of the field's own; with a set-off, more at each end, beyond the tips. Inside a block it crosses all seams, those
 * across it and those down it. */
static void count_crossed(const struct muslin_solution *solution, const struct field *field, struct msl_size *size)
{
    size->across = 2 * field->columns + 2 * beyond_tips(field, field->rows) + most_along(solution, field, 1);
    size->down = 2 * field->rows + 2 * beyond_tips(field, field->columns) + most_along(solution, field, 0);
}

void msl_diagonal_size(struct msl_solving *solving, uint32_t node)
{
    struct muslin_solution *s = solving->solution;
    const struct field field = field_of(s, node);
    const int64_t blocks = blocks_in(&field);
    struct msl_size *size = msl_size_of(s, node);
    size->slots = (uint32_t)s->slots.used;
    size->patches = pieces_of(&field);
    for (int64_t k = 0; solving->check->status == MUSLIN_OK && k < blocks; k++) {
        const struct msl_size *block = msl_size_of(s, (uint32_t)field.nodes[k]);
        msl_add_slot(solving, 0, size->patches);
        check_square(solving, node, &field, k, block);
        check_allowances(solving, node, &field, k, block);
        size->patches += block->patches;
    }
    size->width = side_of(&field, field.columns);
    size->height = side_of(&field, field.rows);
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++)
        size->edge[edge] = msl_value_of(s, MSL_ALLOWANCE);
    size->along[MSL_TOP] = size->along[MSL_BOTTOM] = along_edge(&field, field.columns);
    size->along[MSL_LEFT] = size->along[MSL_RIGHT] = along_edge(&field, field.rows);
    count_crossed(s, &field, size);
}

/* ---- blocks ----------------------------------------------------------------------------------------------------- */

struct msl_part msl_diagonal_part(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct field field = field_of(solution, node);
    const struct place place = place_of(&field, k);
    return (struct msl_part){ (uint32_t)field.nodes[k], 0, place.u * field.block, place.v * field.block, 1 };
}

void msl_diagonal_point(const struct muslin_solution *solution, uint32_t node, muslin_len u, muslin_len v,
                        muslin_len *x, muslin_len *y)
{
    const struct field field = field_of(solution, node);
    *x = nearest(2 * field.set_off, u + v, 2);
    *y = nearest(2 * field.set_off, (2 * field.rows - 1) * field.block + v - u, 2);
}

/* ---- lines ------------------------------------------------------------------------------------------------------ */

/* (whole + root sqrt 2) / 4. */
struct number {
    int64_t whole;
    int64_t root;
};

static struct number sum(struct number a, struct number b)
{
    return (struct number){ a.whole + b.whole, a.root + b.root };
}

static struct number difference(struct number a, struct number b)
{
    return (struct number){ a.whole - b.whole, a.root - b.root };
}

static struct number half(struct number a)
{
    return (struct number){ a.whole / 2, a.root / 2 };
}

/* A line that bounds a piece: where u is `at` blocks, v so, or an edge of the field; the piece lies below it (1), to
 * smaller u, v, x or y, or above it (-1). */
enum line_kind { LINE_U, LINE_V, LINE_X, LINE_Y };

struct line {
    int32_t kind; /* enum line_kind */
    int32_t side;
    int64_t at;   /* in blocks; of an edge: how many there are along x or y, 0 for the left one and the lower one */
};

/* x - y of a line along which u is the same, x + y where v is, x or y of an edge; moved outwards by half of `seam`. */
static struct number value_of(const struct field *field, const struct line *line, muslin_len seam)
{
    const int64_t tips = 2 * (2 * field->rows - 1);
    const int64_t out = line->side * seam;
    struct number value = { 0, 0 };
    switch (line->kind) {
    case LINE_U:
        value.root = (4 * line->at - tips) * field->block + 2 * out;
        break;
    case LINE_V:
        value.whole = 8 * field->set_off;
        value.root = (4 * line->at + tips) * field->block + 2 * out;
        break;
    default:
        value.whole = (line->at == 0 ? 0 : 8 * field->set_off) + 2 * out;
        value.root = 4 * line->at * field->block;
        break;
    }
    return value;
}

struct corner {
    struct number x;
    struct number y;
};

/* Where two lines of different kinds meet. */
static struct corner meeting_of(const struct field *field, const struct line *a, const struct line *b, muslin_len seam)
{
    const struct line *first = a->kind < b->kind ? a : b;
    const struct line *second = a->kind < b->kind ? b : a;
    const struct number p = value_of(field, first, seam);
    const struct number q = value_of(field, second, seam);
    if (first->kind == LINE_X)
        return (struct corner){ p, q };
    if (second->kind == LINE_V) /* x - y and x + y */
        return (struct corner){ half(sum(q, p)), half(difference(q, p)) };
    if (first->kind == LINE_U) /* x - y, and one of them */
        return second->kind == LINE_X ? (struct corner){ q, difference(q, p) } : (struct corner){ sum(p, q), q };
    return second->kind == LINE_X ? (struct corner){ q, difference(p, q) } : (struct corner){ difference(p, q), q };
}

/* ---- seams by number -------------------------------------------------------------------------------------------- */

/* First those at the left of each block but the first, by its number; then those at the left of the triangles at the
 * right and the bottom; then those below each row, from the upper right; then those of the corners. */
static int64_t last_seams(const struct field *field)
{
    return blocks_in(field) - 1 + field->columns - 1 + field->rows - 1;
}

static int64_t row_seams(const struct field *field)
{
    return field->columns + field->rows - 2;
}

static int64_t seam_of_corner(const struct field *field, enum side corner)
{
    return last_seams(field) + row_seams(field) + (int64_t)corner - CORNER_TOP_LEFT;
}

static int64_t seam_at_v(const struct field *field, int64_t at)
{
    if (at == field->columns)
        return seam_of_corner(field, CORNER_TOP_RIGHT);
    if (at == 1 - field->rows)
        return seam_of_corner(field, CORNER_BOTTOM_LEFT);
    return last_seams(field) + field->columns - 1 - at;
}

int64_t msl_diagonal_seams(const struct muslin_solution *solution, uint32_t node)
{
    const struct field field = field_of(solution, node);
    return last_seams(&field) + row_seams(&field) + 4;
}

/* ---- outlines --------------------------------------------------------------------------------------------------- */

/* The lines round a piece, counter-clockwise. */
struct shape {
    struct line lines[5];
    int32_t count;
};

static void add_line(struct shape *shape, enum line_kind kind, int32_t side, int64_t at)
{
    shape->lines[shape->count] = (struct line){ (int32_t)kind, side, at };
    shape->count++;
}

/* Whether what runs on from a tip k blocks away from a corner crosses the corner's seam. */
static int is_reached(const struct field *field, int64_t k)
{
    return field->set_off > 0 && k <= field->reach;
}

/* Side triangle k, from 1, at the top; in row k. */
static void bound_top(const struct field *field, int64_t k, struct shape *shape)
{
    add_line(shape, LINE_U, 1, k);
    if (field->set_off > 0)
        add_line(shape, LINE_V, 1, k + 1);
    if (k > field->reach)
        add_line(shape, LINE_Y, 1, field->rows);
    if (is_reached(field, k - 1))
        add_line(shape, LINE_U, -1, 0);
    add_line(shape, LINE_V, -1, k);
}

/* Side triangle k, from 1, at the left; in row -k. */
static void bound_left(const struct field *field, int64_t k, struct shape *shape)
{
    add_line(shape, LINE_U, 1, k);
    add_line(shape, LINE_V, 1, 1 - k);
    if (is_reached(field, k - 1))
        add_line(shape, LINE_U, -1, 0);
    if (k > field->reach)
        add_line(shape, LINE_X, -1, 0);
    if (field->set_off > 0)
        add_line(shape, LINE_V, -1, -k);
}

static void bound_top_left(const struct field *field, struct shape *shape)
{
    add_line(shape, LINE_U, 1, 0);
    if (is_reached(field, field->columns - 1))
        add_line(shape, LINE_V, 1, field->columns);
    add_line(shape, LINE_Y, 1, field->rows);
    add_line(shape, LINE_X, -1, 0);
    if (is_reached(field, field->rows - 1))
        add_line(shape, LINE_V, -1, 1 - field->rows);
}

static void bound_top_right(const struct field *field, struct shape *shape)
{
    add_line(shape, LINE_V, -1, field->columns);
    add_line(shape, LINE_X, 1, field->columns);
    add_line(shape, LINE_Y, 1, field->rows);
}

/* The same half a turn on. */
static void turn_half(const struct field *field, struct shape *shape)
{
    const int64_t all[] = { field->columns + field->rows - 1, field->columns - field->rows + 1, field->columns,
                            field->rows };
    for (int32_t i = 0; i < shape->count; i++) {
        struct line *line = &shape->lines[i];
        line->at = all[line->kind] - line->at;
        line->side = -line->side;
    }
}

/* Right and bottom are left and top half a turn on, counted from the other end. */
static void bound_piece(const struct field *field, int64_t piece, struct shape *shape)
{
    const enum side side = side_with(field, piece);
    const int64_t number = piece - first_of(field, side);
    switch (side) {
    case SIDE_TOP:
        bound_top(field, number + 1, shape);
        break;
    case SIDE_BOTTOM:
        bound_top(field, field->columns - 1 - number, shape);
        break;
    case SIDE_LEFT:
        bound_left(field, number + 1, shape);
        break;
    case SIDE_RIGHT:
        bound_left(field, field->rows - 1 - number, shape);
        break;
    case CORNER_TOP_LEFT:
    case CORNER_BOTTOM_RIGHT:
        bound_top_left(field, shape);
        break;
    default:
        bound_top_right(field, shape);
        break;
    }
    if (side == SIDE_RIGHT || side == SIDE_BOTTOM || side == CORNER_BOTTOM_RIGHT || side == CORNER_BOTTOM_LEFT)
        turn_half(field, shape);
}

/* The seam at the end of a row, between a side triangle and its block. */
static int64_t end_seam(const struct field *field, int64_t piece)
{
    const enum side side = side_with(field, piece);
    const int64_t number = piece - first_of(field, side);
    if (side == SIDE_TOP)
        return number;
    if (side == SIDE_LEFT)
        return block_at(field, 0, number + 1) - 1;
    return blocks_in(field) - 1 + piece - first_of(field, SIDE_RIGHT);
}

static int64_t seam_along(const struct field *field, int64_t piece, const struct line *line)
{
    if (line->kind == LINE_V)
        return seam_at_v(field, line->at);
    if (line->kind != LINE_U)
        return -1;
    if (line->at == 0)
        return seam_of_corner(field, CORNER_TOP_LEFT);
    if (line->at == field->columns + field->rows - 1)
        return seam_of_corner(field, CORNER_BOTTOM_RIGHT);
    return end_seam(field, piece);
}

void msl_diagonal_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                          struct msl_ring *ring)
{
    const struct field field = field_of(solution, node);
    const muslin_len seam = stage == MUSLIN_STAGE_RAW ? field.seam : 0;
    const int is_corner = piece >= first_of(&field, CORNER_TOP_LEFT);
    const int32_t *args = msl_node_args(solution->quilt, node);
    struct shape shape = { .count = 0 };
    bound_piece(&field, piece, &shape);
    ring->fabric = (uint32_t)args[is_corner ? DIAGONAL_CORNER_FABRIC : DIAGONAL_SIDE_FABRIC];
    ring->region = (int32_t)piece + 1;
    ring->corners = shape.count;
    ring->exact = 0;
    ring->turn = 0;
    for (int32_t i = 0; i < shape.count; i++) {
        const struct line *before = &shape.lines[(i + shape.count - 1) % shape.count];
        const struct corner corner = meeting_of(&field, before, &shape.lines[i], seam);
        ring->x[i] = nearest(corner.x.whole, corner.x.root, 4);
        ring->y[i] = nearest(corner.y.whole, corner.y.root, 4);
        ring->seam[i] = (int32_t)seam_along(&field, piece, &shape.lines[i]);
    }
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

static void place_ends(const struct field *field, const struct line *along, const struct line *from,
                       const struct line *to, struct msl_seam *seam)
{
    const struct corner first = meeting_of(field, along, from, 0);
    const struct corner last = meeting_of(field, along, to, 0);
    seam->from_x = nearest(first.x.whole, first.x.root, 4);
    seam->from_y = nearest(first.y.whole, first.y.root, 4);
    seam->to_x = nearest(last.x.whole, last.x.root, 4);
    seam->to_y = nearest(last.y.whole, last.y.root, 4);
}

/* Length of a seam, so many blocks from tip to tip: `outside` of its two ends run on to the outside, f sqrt 2 and, raw,
 * another e sqrt 2; the others stop, raw, at e beyond the tip. */
static muslin_len sewn(const struct field *field, int64_t blocks, int64_t outside)
{
    return nearest(2 * blocks * field->block + (2 - outside) * field->seam,
                   outside * (2 * field->set_off + field->seam), 2);
}

/* The seam at the left of what begins at u, v: a block, or a triangle at the end of a row. */
static struct msl_seam end_of_cell(const struct field *field, int64_t u, int64_t v)
{
    const struct line along = { LINE_U, 1, u };
    const struct line below = { LINE_V, -1, v };
    const struct line above_it = { LINE_V, 1, v + 1 };
    struct msl_seam seam = { 0, 0, 0, 0, sewn(field, 1, 0), 0, 0 };
    place_ends(field, &along, &below, &above_it, &seam);
    return seam;
}

static struct msl_seam block_seam(const struct field *field, int64_t k)
{
    const struct place place = place_of(field, k);
    struct msl_seam seam = end_of_cell(field, place.u, place.v);
    seam.first = left_of(field, &place);
    seam.second = pieces_of(field) + k;
    return seam;
}

/* Between a triangle at the right or the bottom and the block at its left. */
static struct msl_seam last_seam(const struct field *field, int64_t number)
{
    const int right = number < field->rows - 1;
    const int64_t along = right ? number : number - (field->rows - 1);
    const int64_t block = right ? block_at(field, field->columns - 1, along) : block_at(field, along, field->rows - 1);
    const struct place place = place_of(field, block);
    struct msl_seam seam = end_of_cell(field, place.u + 1, place.v);
    seam.first = pieces_of(field) + block;
    seam.second = first_of(field, SIDE_RIGHT) + number;
    return seam;
}

/* How many blocks from the corner's seam the tip lies from which the seam at v runs on to the outside. */
static int64_t tip_of_row(int64_t v)
{
    return v > 0 ? v - 1 : -v;
}

/* The first block of row b. */
static int64_t first_block(const struct field *field, int64_t b)
{
    return b > 0 ? block_at(field, b, 0) : block_at(field, 0, -b);
}

/* Below row b, along v = b: upwards, so to the left, where row b - 1 lies at its left. It ends at the upper left
 * corner's seam where that is reached, else at the left or the top, and half a turn on it begins so. */
static struct msl_seam row_seam(const struct field *field, int64_t b)
{
    const int64_t all = field->columns + field->rows - 1;
    const int64_t turned = field->columns - field->rows + 1 - b;
    const int64_t left = tip_of_row(b);
    const int64_t right = tip_of_row(turned);
    const struct line along = { LINE_V, -1, b };
    struct line from = { LINE_U, 1, all };
    struct line to = { LINE_U, -1, 0 };
    int64_t blocks = all;
    if (right > field->reach) {
        from = turned > 0 ? (struct line){ LINE_Y, -1, 0 } : (struct line){ LINE_X, 1, field->columns };
        blocks -= right;
    }
    if (left > field->reach) {
        to = b > 0 ? (struct line){ LINE_Y, 1, field->rows } : (struct line){ LINE_X, -1, 0 };
        blocks -= left;
    }
    const int64_t pieces = pieces_of(field);
    struct msl_seam seam = { 0, 0, 0, 0, sewn(field, blocks, (left > field->reach) + (right > field->reach)),
                             pieces + first_block(field, b - 1), pieces + first_block(field, b) };
    place_ends(field, &along, &from, &to, &seam);
    return seam;
}

/* Upper left and lower right stop where upper right and lower left come across; those run on to the outside. */
static muslin_len corner_sewn(const struct field *field, enum side corner)
{
    if (corner == CORNER_TOP_RIGHT || corner == CORNER_BOTTOM_LEFT)
        return sewn(field, 1, 2);
    const int64_t across = field->columns - 1;
    const int64_t down = field->rows - 1;
    const int64_t blocks = 1 + (across > field->reach ? 0 : across) + (down > field->reach ? 0 : down);
    return sewn(field, blocks, (across > field->reach) + (down > field->reach));
}

/* Along the first line of the corner's outline, upwards. That is from the line before it to the one after at the upper
 * and lower left, where the corner lies at the seam's left. */
static struct msl_seam corner_seam(const struct field *field, enum side corner)
{
    const int64_t block[] = { 0, block_at(field, field->columns - 1, field->rows - 1), field->columns - 1,
                              block_at(field, 0, field->rows - 1) };
    const int64_t piece = first_of(field, corner);
    const int64_t other = pieces_of(field) + block[corner - CORNER_TOP_LEFT];
    const int left = corner == CORNER_TOP_LEFT || corner == CORNER_BOTTOM_LEFT;
    struct shape shape = { .count = 0 };
    bound_piece(field, piece, &shape);
    const struct line *before = &shape.lines[shape.count - 1];
    const struct line *after = &shape.lines[1];
    struct msl_seam seam = { 0, 0, 0, 0, corner_sewn(field, corner), left ? piece : other, left ? other : piece };
    place_ends(field, &shape.lines[0], left ? before : after, left ? after : before, &seam);
    return seam;
}

struct msl_seam msl_diagonal_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct field field = field_of(solution, node);
    const int64_t blocks = blocks_in(&field) - 1;
    const int64_t rows = last_seams(&field);
    const int64_t corners = rows + row_seams(&field);
    if (k < blocks)
        return block_seam(&field, k + 1);
    if (k < rows)
        return last_seam(&field, k - blocks);
    if (k < corners)
        return row_seam(&field, field.columns - 1 - (k - rows));
    return corner_seam(&field, (enum side)(CORNER_TOP_LEFT + (k - corners)));
}

/* The seam at the right of a block: that at the left of the next one in its row, or of what ends the row. */
static int64_t right_seam(const struct field *field, const struct place *place)
{
    const int last_column = place->column == field->columns - 1;
    const int last_row = place->row == field->rows - 1;
    if (place->alternate)
        return block_at(field, place->column + 1, place->row + 1) - 1;
    if (!last_column && !last_row)
        return alternate_at(field, place->column, place->row) - 1;
    if (!last_row)
        return end_seam(field, first_of(field, SIDE_RIGHT) + place->row);
    return last_column ? seam_of_corner(field, CORNER_BOTTOM_RIGHT)
                       : end_seam(field, first_of(field, SIDE_BOTTOM) + place->column);
}

int64_t msl_diagonal_beside(const struct muslin_solution *solution, uint32_t node, int64_t k, enum msl_edge edge)
{
    const struct field field = field_of(solution, node);
    const struct place place = place_of(&field, k);
    switch (edge) {
    case MSL_LEFT:
        return k == 0 ? seam_of_corner(&field, CORNER_TOP_LEFT) : k - 1;
    case MSL_RIGHT:
        return right_seam(&field, &place);
    case MSL_TOP:
        return seam_at_v(&field, place.v + 1);
    default:
        return seam_at_v(&field, place.v);
    }
}
