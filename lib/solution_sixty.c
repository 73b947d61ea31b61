/* solution_sixty.c - rows of 60 degree pieces, solved.
 *
 * SPDX-License-Identifier: MIT
 *
 * With H the height of a row, h = H / sqrt 3 is half a triangle's side, and all corners lie at whole multiples of h.
 * Cells, a triangle's room each, are numbered from 0 in a row, and stand on their side or on their point in turn. At
 * the left of cell q is bound q, a slanted line: from q h below to (q + 1) h above where the cell stands on its side,
 * else from (q + 1) h to q h. Bound `cells` is the last one. A piece of n cells from q on lies between bounds q and
 * q + n; the half-triangles lie outside bounds 0 and `cells`, up to the upright edges at 0 and (cells + 1) h. Rows are
 * numbered from the top. The pieces given come first, then the half-triangles, left and right of each row. */
#include "solution_inside.h"

#include "surd.h"

/* ---- the rows --------------------------------------------------------------------------------------------------- */

struct rows {
    int64_t cells;
    int64_t rows;
    muslin_len height; /* H */
    muslin_len seam;   /* E, twice what a raw edge stands out */
    int64_t pieces;    /* given ones */
    int32_t first;     /* 1: cell 0 of the first row stands on its side */
    const int32_t *args;          /* of the pieces */
    const struct msl_slot *slots; /* first cell and row of each; null where there is none */
};

static struct rows rows_of(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    const int64_t pieces = ((int64_t)msl_node_row(solution->quilt, node)->count - SIXTY_PIECES) / 2;
    const struct msl_slot *slots = msl_rows_from(&solution->slots, msl_size_of(solution, node)->slots, sizeof *slots);
    return (struct rows){ args[SIXTY_CELLS], args[SIXTY_ROWS], msl_value_of(solution, args[SIXTY_HEIGHT]),
                          msl_seam_of(solution), pieces, args[SIXTY_FIRST], args + SIXTY_PIECES, slots };
}

static int64_t cells_of(const struct rows *rows, int64_t piece)
{
    return rows->args[2 * piece + 1];
}

static int stands_on_side(const struct rows *rows, int64_t row, int64_t cell)
{
    return (row + cell + rows->first) % 2 == 1;
}

/* (whole + root sqrt 3) / 6, to the nearest tick. */
static muslin_len nearest_sixth(int64_t whole, int64_t root)
{
    struct msl_surd surd = msl_surd_of(whole, root, 3, 6);
    struct msl_exact exact = msl_surd_exact(&surd);
    return exact.floor + exact.upper_half;
}

/* `halves` times h. */
static muslin_len along_row(const struct rows *rows, int64_t halves)
{
    return nearest_sixth(0, 2 * halves * rows->height);
}

/* ---- size ------------------------------------------------------------------------------------------------------- */

/* A slot for each piece. Returns the most pieces in a row. */
static int64_t place_pieces(struct msl_solving *solving, const struct rows *rows)
{
    int64_t most = 0;
    int64_t in_row = 0;
    struct msl_slot place = { 0 };
    for (int64_t piece = 0; piece < rows->pieces; piece++) {
        msl_add_slot(solving, place.offset, place.patches);
        place.offset += cells_of(rows, piece);
        in_row++;
        most = in_row > most ? in_row : most;
        if (place.offset == rows->cells) {
            place = (struct msl_slot){ 0, place.patches + 1 };
            in_row = 0;
        }
    }
    return most;
}

/* Pieces that touch the upper (1) or lower (0) side of a row along more than a point: all but triangles that only point
 * there, among them at the ends half-triangles that do. */
static int64_t along_side(const struct rows *rows, int64_t row, int upper)
{
    int64_t touch = (stands_on_side(rows, row, 0) == upper) + (stands_on_side(rows, row, rows->cells) != upper);
    for (int64_t piece = 0; piece < rows->pieces; piece++)
        if (rows->slots[piece].patches == row)
            touch += cells_of(rows, piece) > 1 || stands_on_side(rows, row, rows->slots[piece].offset) != upper;
    return touch;
}

/* A level line in a row crosses every bound between its pieces, one more than they are. An upright line crosses one
 * bound in a row at most, as each reaches over its own h; near the sides it does so in every row, and crosses all seams
 * between rows. */
void msl_sixty_size(struct msl_solving *solving, uint32_t node)
{
    struct muslin_solution *s = solving->solution;
    struct msl_size *size = msl_size_of(s, node);
    size->slots = (uint32_t)s->slots.used;
    struct rows rows = rows_of(s, node);
    size->across = place_pieces(solving, &rows) + 1;
    if (solving->check->status != MUSLIN_OK)
        return;
    rows = rows_of(s, node); /* the slots may have moved */
    size->width = along_row(&rows, rows.cells + 1);
    size->height = rows.rows * rows.height;
    size->patches = rows.pieces + 2 * rows.rows;
    size->down = 2 * rows.rows - 1;
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++)
        size->edge[edge] = msl_value_of(s, MSL_ALLOWANCE);
    size->along[MSL_LEFT] = size->along[MSL_RIGHT] = rows.rows;
    size->along[MSL_TOP] = along_side(&rows, 0, 1);
    size->along[MSL_BOTTOM] = along_side(&rows, rows.rows - 1, 0);
}

int64_t msl_sixty_pieces(const struct muslin_solution *solution, uint32_t node)
{
    const struct rows rows = rows_of(solution, node);
    return rows.pieces + 2 * rows.rows;
}

/* ---- seams by number -------------------------------------------------------------------------------------------- */

/* First those at the left of each piece, by its number; then those at the right end of each row; then those below each
 * row but the last. */
static int64_t end_seam(const struct rows *rows, int64_t row)
{
    return rows->pieces + row;
}

/* -1 below the last row, and above the first, which is below row -1. */
static int64_t seam_below(const struct rows *rows, int64_t row)
{
    return row < 0 || row == rows->rows - 1 ? -1 : rows->pieces + rows->rows + row;
}

/* The first piece of a row: the slots are in the order of rows. */
static int64_t first_in(const struct rows *rows, int64_t row)
{
    int64_t low = 0;
    int64_t high = rows->pieces;
    while (low < high) {
        const int64_t middle = (low + high) / 2;
        if (rows->slots[middle].patches < row)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

/* ---- outlines --------------------------------------------------------------------------------------------------- */

/* A corner in sixths of a tick, (whole + root sqrt 3) / 6, above the row's lower side. */
struct point {
    int64_t x_whole;
    int64_t x_root;
    int64_t y_whole;
    int64_t y_root;
};

/* Where a bound, moved by e to its right (1) or left (-1), meets the lower or upper (1) side moved out by e. The
 * slanted line moves by 2 e / sqrt 3 along the side; the side moves out by e and so meets it another e / sqrt 3 on, to
 * where it leans. */
static struct point bound_end(const struct rows *rows, int64_t row, int64_t bound, int upper, int64_t moved,
                              muslin_len seam)
{
    const int leans_right = stands_on_side(rows, row, bound);
    const int64_t halves = bound + (leans_right == upper);
    const int64_t leans = leans_right == upper ? 1 : -1;
    return (struct point){ .x_root = 2 * halves * rows->height + (2 * moved + leans) * seam,
                           .y_whole = upper ? 6 * rows->height + 3 * seam : -3 * seam };
}

static void add_corner(struct msl_ring *ring, const struct rows *rows, int64_t row, const struct point *point,
                       int64_t seam)
{
    const muslin_len up = (rows->rows - 1 - row) * rows->height;
    ring->x[ring->corners] = nearest_sixth(point->x_whole, point->x_root);
    ring->y[ring->corners] = up + nearest_sixth(point->y_whole, point->y_root);
    ring->seam[ring->corners] = (int32_t)seam;
    ring->corners++;
}

/* The whole tip of a triangle: raw it lies 2 e beyond the finished one. */
static void add_tip(struct msl_ring *ring, const struct rows *rows, int64_t piece, int upper, muslin_len seam,
                    int64_t next_seam)
{
    const struct msl_slot *place = &rows->slots[piece];
    const struct point tip = { .x_root = 2 * (place->offset + 1) * rows->height,
                               .y_whole = upper ? 6 * rows->height + 6 * seam : -6 * seam };
    add_corner(ring, rows, place->patches, &tip, next_seam);
}

/* Lower side, right bound, upper side, left bound. */
static void draw_piece(const struct rows *rows, int64_t piece, muslin_len seam, int sharp, struct msl_ring *ring)
{
    const struct msl_slot *place = &rows->slots[piece];
    const int64_t row = place->patches;
    const int64_t last = place->offset + cells_of(rows, piece);
    const int64_t right = last == rows->cells ? end_seam(rows, row) : piece + 1;
    const int points = sharp && cells_of(rows, piece) == 1;
    const int up = stands_on_side(rows, row, place->offset);
    if (points && !up) {
        add_tip(ring, rows, piece, 0, seam, right);
    } else {
        const struct point from = bound_end(rows, row, place->offset, 0, -1, seam);
        const struct point to = bound_end(rows, row, last, 0, 1, seam);
        add_corner(ring, rows, row, &from, seam_below(rows, row));
        add_corner(ring, rows, row, &to, right);
    }
    if (points && up) {
        add_tip(ring, rows, piece, 1, seam, piece);
    } else {
        const struct point from = bound_end(rows, row, last, 1, 1, seam);
        const struct point to = bound_end(rows, row, place->offset, 1, -1, seam);
        add_corner(ring, rows, row, &from, seam_below(rows, row - 1));
        add_corner(ring, rows, row, &to, piece);
    }
}

/* Corners of a half-triangle: along the side of the row that it touches, and its sharp tip, which raw lies
 * (2 + sqrt 3) e beyond the finished one. */
static void draw_left(const struct rows *rows, int64_t row, muslin_len seam, struct msl_ring *ring)
{
    const int upper = stands_on_side(rows, row, 0);
    const int64_t inner = first_in(rows, row);
    const struct point along = bound_end(rows, row, 0, upper, 1, seam);
    const struct point square = { .x_whole = -3 * seam, .y_whole = along.y_whole };
    const struct point tip = { -3 * seam, 0, upper ? -6 * seam : 6 * rows->height + 6 * seam, upper ? -3 * seam
                                                                                                   : 3 * seam };
    if (upper) {
        add_corner(ring, rows, row, &tip, inner);
        add_corner(ring, rows, row, &along, seam_below(rows, row - 1));
        add_corner(ring, rows, row, &square, -1);
    } else {
        add_corner(ring, rows, row, &square, seam_below(rows, row));
        add_corner(ring, rows, row, &along, inner);
        add_corner(ring, rows, row, &tip, -1);
    }
}

static void draw_right(const struct rows *rows, int64_t row, muslin_len seam, struct msl_ring *ring)
{
    const int upper = !stands_on_side(rows, row, rows->cells);
    const int64_t width = 2 * (rows->cells + 1) * rows->height;
    const struct point along = bound_end(rows, row, rows->cells, upper, -1, seam);
    const struct point square = { 3 * seam, width, along.y_whole, 0 };
    const struct point tip = { 3 * seam, width, upper ? -6 * seam : 6 * rows->height + 6 * seam, upper ? -3 * seam
                                                                                                      : 3 * seam };
    if (upper) {
        add_corner(ring, rows, row, &tip, -1);
        add_corner(ring, rows, row, &square, seam_below(rows, row - 1));
        add_corner(ring, rows, row, &along, end_seam(rows, row));
    } else {
        add_corner(ring, rows, row, &along, seam_below(rows, row));
        add_corner(ring, rows, row, &square, -1);
        add_corner(ring, rows, row, &tip, end_seam(rows, row));
    }
}

void msl_sixty_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                       struct msl_ring *ring)
{
    const struct rows rows = rows_of(solution, node);
    const int32_t *args = msl_node_args(solution->quilt, node);
    const muslin_len seam = stage == MUSLIN_STAGE_RAW ? rows.seam : 0;
    const int sharp = seam == 0 || solution->spec.tip == MUSLIN_TIP_SHARP;
    const int64_t half = piece - rows.pieces;
    ring->fabric = (uint32_t)(half < 0 ? rows.args[2 * piece] : args[SIXTY_END_FABRIC]);
    ring->region = (int32_t)piece + 1;
    ring->corners = 0;
    ring->exact = 0;
    if (half < 0)
        draw_piece(&rows, piece, seam, sharp, ring);
    else if (half % 2 == 0)
        draw_left(&rows, half / 2, seam, ring);
    else
        draw_right(&rows, half / 2, seam, ring);
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

int64_t msl_sixty_seams(const struct muslin_solution *solution, uint32_t node)
{
    const struct rows rows = rows_of(solution, node);
    return rows.pieces + 2 * rows.rows - 1;
}

/* Along a bound, sewn from side to side of the raw row: 2 (H + E) / sqrt 3. */
static struct msl_seam slanted_seam(const struct rows *rows, int64_t row, int64_t bound, int64_t first, int64_t second)
{
    const int leans_right = stands_on_side(rows, row, bound);
    const muslin_len low = (rows->rows - 1 - row) * rows->height;
    return (struct msl_seam){ along_row(rows, bound + !leans_right), low, along_row(rows, bound + leans_right),
                              low + rows->height, nearest_sixth(0, 4 * (rows->height + rows->seam)), first, second };
}

struct msl_seam msl_sixty_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct rows rows = rows_of(solution, node);
    const int64_t below = k - rows.pieces - rows.rows;
    if (below >= 0) {
        const muslin_len y = (rows.rows - 1 - below) * rows.height;
        const muslin_len sewn = nearest_sixth(6 * rows.seam, 2 * (rows.cells + 1) * rows.height);
        return (struct msl_seam){ 0, y, msl_size_of(solution, node)->width, y, sewn, rows.pieces + 2 * below,
                                  rows.pieces + 2 * below + 2 };
    }
    const int64_t row = k - rows.pieces;
    if (row >= 0)
        return slanted_seam(&rows, row, rows.cells, first_in(&rows, row + 1) - 1, rows.pieces + 2 * row + 1);
    const struct msl_slot *place = &rows.slots[k];
    const int64_t before = place->offset == 0 ? rows.pieces + 2 * place->patches : k - 1;
    return slanted_seam(&rows, place->patches, place->offset, before, k);
}
