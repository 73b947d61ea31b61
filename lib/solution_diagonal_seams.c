/* solution_diagonal_seams.c - the seams of a field on point: by number, where they run, how long they are.
 *
 * SPDX-License-Identifier: MIT
 *
 * First come those within rows, each at the left of what it has at its right: of blocks, sashes and cornerstones by
 * their numbers, then of sashes and cornerstones that the edge cuts off, then of the triangles at the right and the
 * bottom. What begins a row has none: the first block or sash, and what is cut off at the left end of a row of sashes;
 * a cornerstone of the frame lies along the leg of a triangle instead, which is sewn to the sash beside it too. Then
 * come the seams below each row, from the upper right; then those of the corners. */
#include "solution_diagonal_pieces.h"

/* ---- seams within rows, by number ------------------------------------------------------------------------------- */

/* Cornerstones of the frame, or what is cut off at the edge, with a seam at its left: at the right and the bottom; of
 * standing sashes all. */
static int64_t seams_at_edge(const struct msl_field *field)
{
    const int64_t sides = field->columns + field->rows;
    switch (field->layout) {
    case MUSLIN_POINT_LAYOUT_PLAIN:
        return 0;
    case MUSLIN_POINT_LAYOUT_SASH_INNER:
        return 3 * (sides - 2);
    default:
        return sides;
    }
}

/* The part that begins the first block's row. */
static int64_t first_part(const struct msl_field *field)
{
    return msl_part_beside_block(field, 0, MSL_LEFT);
}

/* Seams at the left of parts that are not of the frame, and of what lies at the edge. */
static int64_t seams_before_triangles(const struct msl_field *field)
{
    return msl_first_frame_stone(field) - 1 + seams_at_edge(field);
}

static int64_t uprights_in(const struct msl_field *field)
{
    return seams_before_triangles(field) + field->columns + field->rows - 2;
}

/* The first own piece at the edge with a seam at its left: all that are cut off. */
static int64_t first_cut_off(const struct msl_field *field)
{
    return msl_piece_number(field, MSL_STANDING, MSL_AT_TOP, 0);
}

/* The seam at the left of a part, or of a triangle at the right or the bottom, or of what is cut off; -1: the first
 * part has none. */
static int64_t left_seam(const struct msl_field *field, int64_t item)
{
    const int64_t part = item - msl_own_pieces(field);
    const int64_t cut_off = first_cut_off(field);
    if (part >= 0)
        return part == first_part(field) ? -1 : part - (part > first_part(field));
    if (item < cut_off)
        return seams_before_triangles(field) + item - msl_piece_number(field, MSL_TRIANGLE, MSL_AT_RIGHT, 0);
    return msl_first_frame_stone(field) - 1 + item - cut_off;
}

/* What such a seam has at its right. */
static int64_t item_after(const struct msl_field *field, int64_t seam)
{
    const int64_t pieces = msl_own_pieces(field);
    const int64_t of_parts = msl_first_frame_stone(field) - 1;
    const int is_cut_off =
        field->layout == MUSLIN_POINT_LAYOUT_SASH_CUT || field->layout == MUSLIN_POINT_LAYOUT_SASH_INNER;
    if (seam >= seams_before_triangles(field))
        return msl_piece_number(field, MSL_TRIANGLE, MSL_AT_RIGHT, seam - seams_before_triangles(field));
    if (seam >= of_parts && is_cut_off)
        return first_cut_off(field) + seam - of_parts;
    return pieces + (seam < first_part(field) ? seam : seam + 1);
}

/* ---- seams between rows, by number ------------------------------------------------------------------------------ */

static int64_t seam_of_corner(const struct msl_field *field, enum msl_corner corner)
{
    const int64_t bottom = msl_turned_v(field, msl_corner_v(field));
    const int64_t lines = msl_corner_v(field) - bottom - 1;
    const int64_t rows = msl_is_sashed(field) ? lines : field->columns + field->rows - 2;
    return uprights_in(field) + rows + (int64_t)corner;
}

/* Along v. Without sashes two lines are one. */
static int64_t seam_at_v(const struct msl_field *field, int64_t line)
{
    const int64_t top = msl_corner_v(field);
    if (!msl_is_sashed(field))
        line = 2 * msl_line_pair(line);
    const int64_t below_top = msl_is_sashed(field) ? top - line : (top - line) / 2;
    if (below_top == 0)
        return seam_of_corner(field, MSL_TOP_RIGHT);
    const int64_t seam = uprights_in(field) + below_top - 1;
    return seam < seam_of_corner(field, MSL_TOP_LEFT) ? seam : seam_of_corner(field, MSL_BOTTOM_LEFT);
}

/* The line of a seam between rows. */
static int64_t line_of(const struct msl_field *field, int64_t row_seam)
{
    return msl_corner_v(field) - (msl_is_sashed(field) ? row_seam + 1 : 2 * row_seam + 2);
}

int64_t msl_diagonal_seams(const struct muslin_solution *solution, uint32_t node)
{
    const struct msl_field field = msl_field_of(solution, node);
    return seam_of_corner(&field, MSL_BOTTOM_LEFT) + 1;
}

int64_t msl_diagonal_uprights(const struct muslin_solution *solution, uint32_t node)
{
    const struct msl_field field = msl_field_of(solution, node);
    return uprights_in(&field);
}

/* ---- what lies along what --------------------------------------------------------------------------------------- */

/* At the right of a cell the next one has its seam at its left; after the last one of the last row the corner has. */
static int64_t seam_right_of(const struct msl_field *field, struct msl_cell cell)
{
    const int64_t next = msl_item_at(field, msl_next_cell(field, cell, 1));
    if (next == msl_piece_number(field, MSL_CORNER, MSL_BOTTOM_RIGHT, 0))
        return seam_of_corner(field, MSL_BOTTOM_RIGHT);
    return left_seam(field, next);
}

static int64_t seam_left_of(const struct msl_field *field, int64_t part)
{
    const int64_t seam = left_seam(field, msl_own_pieces(field) + part);
    return seam < 0 ? seam_of_corner(field, MSL_TOP_LEFT) : seam;
}

int64_t msl_seam_along(const struct msl_field *field, int64_t piece, const struct msl_line_on *line)
{
    if (line->kind == MSL_LINE_V)
        return seam_at_v(field, line->at);
    if (line->kind != MSL_LINE_U)
        return -1;
    if (line->at == msl_corner_u(field))
        return seam_of_corner(field, MSL_TOP_LEFT);
    if (line->at == msl_turned_u(field, msl_corner_u(field)))
        return seam_of_corner(field, MSL_BOTTOM_RIGHT);
    if (line->side < 0)
        return left_seam(field, piece);
    const struct msl_cell before = { line->at - 1, msl_row_of(field, msl_own_piece(field, piece)) };
    return seam_right_of(field, before);
}

/* Cornerstones of the frame lie along the leg of a triangle, or along a corner, that the sash beside them in the next
 * row lies along too: at the right and the bottom at its right, at the top and the left at its left. */
static int64_t sash_beside_stone(const struct msl_field *field, int64_t stone, enum msl_edge *edge)
{
    const int64_t columns = field->columns;
    const int64_t rows = field->rows;
    int64_t block = 0;
    *edge = stone < rows + columns ? MSL_RIGHT : MSL_LEFT;
    if (stone < rows)
        block = msl_block_at(field, columns - 1, stone);
    else if (stone < rows + columns)
        block = msl_block_at(field, stone - rows, rows - 1);
    else if (stone < rows + 2 * columns)
        block = msl_block_at(field, stone - rows - columns, 0);
    else
        block = msl_block_at(field, 0, stone - rows - 2 * columns);
    return msl_part_beside_block(field, block, *edge);
}

int64_t msl_diagonal_beside(const struct muslin_solution *solution, uint32_t node, int64_t k, enum msl_edge edge)
{
    const struct msl_field field = msl_field_of(solution, node);
    const struct msl_cell cell = msl_cell_of(&field, k);
    const int64_t stone = k - msl_first_frame_stone(&field);
    if (edge == MSL_TOP || edge == MSL_BOTTOM)
        return seam_at_v(&field, edge == MSL_TOP ? cell.n + 1 : cell.n);
    if (stone >= 0) {
        enum msl_edge outside;
        const int64_t sash = sash_beside_stone(&field, stone, &outside);
        if (edge == outside)
            return edge == MSL_LEFT ? seam_left_of(&field, sash) : seam_right_of(&field, msl_cell_of(&field, sash));
    }
    return edge == MSL_LEFT ? seam_left_of(&field, k) : seam_right_of(&field, cell);
}

/* ---- within rows ------------------------------------------------------------------------------------------------ */

/* What lies on either side of a seam within a row, and where it runs. */
struct upright {
    int64_t first;
    int64_t second;
    int64_t line;      /* along u */
    muslin_len from;   /* along v */
    muslin_len to;
    muslin_len row;
    int32_t at_edge;   /* 1: one end lies on the outer edge */
    int32_t pad;
};

static int is_triangle(const struct msl_field *field, int64_t item)
{
    return item < msl_piece_number(field, MSL_CORNER, MSL_TOP_LEFT, 0);
}

static muslin_len leg_of(const struct msl_field *field)
{
    switch (field->layout) {
    case MUSLIN_POINT_LAYOUT_SASH_OUTER:
        return field->block + field->sash;
    case MUSLIN_POINT_LAYOUT_SASH_INNER:
        return field->block - field->sash;
    default:
        return field->block;
    }
}

/* A triangle's leg: at the top and the right from the lower side of its row, at the others to the upper one. */
static void lay_leg(const struct msl_field *field, const struct msl_own *own, struct upright *upright)
{
    const int at_top = own->side == MSL_AT_TOP || own->side == MSL_AT_RIGHT;
    if (at_top)
        upright->to = upright->from + leg_of(field);
    else
        upright->from = upright->to - leg_of(field);
    upright->at_edge = field->set_off == 0;
}

static int is_cut_at_end(const struct msl_field *field, int64_t item)
{
    if (item >= msl_own_pieces(field))
        return 0;
    const struct msl_own own = msl_own_piece(field, item);
    return own.form == MSL_STANDING || own.form == MSL_EDGE_STONE;
}

/* The cell of what lies at the right of a seam: of an own piece the one that begins at that seam. */
static struct msl_cell cell_of_item(const struct msl_field *field, int64_t item)
{
    const int64_t pieces = msl_own_pieces(field);
    if (item >= pieces)
        return msl_cell_of(field, item - pieces);
    struct msl_bounds bounds;
    msl_bound_piece(field, item, &bounds);
    int32_t i = 0;
    while (bounds.lines[i].kind != MSL_LINE_U || bounds.lines[i].side > 0)
        i++;
    return (struct msl_cell){ bounds.lines[i].at, msl_row_of(field, msl_own_piece(field, item)) };
}

static struct upright upright_of(const struct msl_field *field, int64_t seam)
{
    const int64_t second = item_after(field, seam);
    const struct msl_cell cell = cell_of_item(field, second);
    const int64_t first = msl_item_at(field, msl_next_cell(field, cell, -1));
    struct upright upright = { .first = first,
                               .second = second,
                               .line = cell.m,
                               .from = msl_line_at(field, cell.n),
                               .to = msl_line_at(field, cell.n + 1) };
    const int64_t triangle = is_triangle(field, first) ? first : second;
    upright.row = upright.from;
    upright.at_edge = is_cut_at_end(field, first) || is_cut_at_end(field, second);
    if (is_triangle(field, triangle)) {
        const struct msl_own own = msl_own_piece(field, triangle);
        lay_leg(field, &own, &upright);
    }
    return upright;
}

struct msl_upright msl_diagonal_upright(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct msl_field field = msl_field_of(solution, node);
    const struct upright upright = upright_of(&field, k);
    return (struct msl_upright){ msl_line_at(&field, upright.line), upright.from, upright.to, upright.row };
}

/* ---- how long and where ----------------------------------------------------------------------------------------- */

/* Length of a seam, so long from tip to tip: `outside` of its two ends lie on the outer edge, f sqrt 2 beyond the tip
 * and, raw, another e sqrt 2, for there something is cut at 45 degrees, be what lies beside it square or not; the
 * others stop, raw, at e beyond the tip. */
static muslin_len sewn(const struct msl_field *field, muslin_len length, int64_t outside)
{
    return msl_nearest_point(2 * length + (2 - outside) * field->seam, outside * (2 * field->set_off + field->seam),
                             2);
}

static struct msl_seam upright_seam(const struct muslin_solution *solution, uint32_t node,
                                    const struct msl_field *field, int64_t k)
{
    const struct upright upright = upright_of(field, k);
    const muslin_len u = msl_line_at(field, upright.line);
    struct msl_seam seam = { .sewn = sewn(field, upright.to - upright.from, upright.at_edge),
                             .first = upright.first,
                             .second = upright.second };
    msl_diagonal_point(solution, node, u, upright.from, &seam.from_x, &seam.from_y);
    msl_diagonal_point(solution, node, u, upright.to, &seam.to_x, &seam.to_y);
    return seam;
}

static void place_ends(const struct msl_field *field, const struct msl_line_on *along, const struct msl_line_on *from,
                       const struct msl_line_on *to, struct msl_seam *seam)
{
    const struct msl_meets first = msl_where_meet(field, along, from, 0);
    const struct msl_meets last = msl_where_meet(field, along, to, 0);
    seam->from_x = msl_nearest_point(first.x.whole, first.x.root, 4);
    seam->from_y = msl_nearest_point(first.y.whole, first.y.root, 4);
    seam->to_x = msl_nearest_point(last.x.whole, last.x.root, 4);
    seam->to_y = msl_nearest_point(last.y.whole, last.y.root, 4);
}

/* Where a seam between rows ends at its left. */
struct end {
    struct msl_line_on line;
    muslin_len u;       /* of the tip there */
    int32_t is_outside; /* 1: it runs on from that to the outside */
    int32_t pad;
};

/* In which row of blocks, counted away from the corner, the tip lies that is at the left end of line 2 b or 2 b + 1. */
static int64_t tip_of(int64_t b)
{
    return b > 0 ? b - 1 : -b;
}

/* Of a row of sashes that lies in the upper half the upper side runs on from the tip of a frame's cornerstone, in the
 * lower half the lower side; the other one stops at the leg of a triangle. */
static int stops_at_leg(const struct msl_field *field, int64_t line)
{
    return field->layout == MUSLIN_POINT_LAYOUT_SASH_OUTER && (line > 1) != ((line & 1) != 0);
}

static struct end left_end(const struct msl_field *field, int64_t line)
{
    const int64_t b = msl_line_pair(line);
    const int64_t tip = tip_of(b);
    const muslin_len v = msl_line_at(field, line);
    struct end end = {
        .line = { .kind = MSL_LINE_U, .side = -1, .at = stops_at_leg(field, line) ? 2 * tip : msl_corner_u(field) }
    };
    end.u = msl_line_at(field, end.line.at);
    if (tip <= field->reach || stops_at_leg(field, line))
        return end;
    end.is_outside = 1;
    end.line = b > 0 ? (struct msl_line_on){ MSL_LINE_Y, 1, field->rows } : (struct msl_line_on){ MSL_LINE_X, -1, 0 };
    end.u = b > 0 ? v - field->block - field->outside : -v - field->outside;
    return end;
}

/* The first place of a row of blocks, or of sashes the first that lies there, seen along its lower line. */
static int64_t first_in_row(const struct msl_field *field, int64_t n)
{
    const int64_t b = msl_line_pair(n);
    const int64_t first = (n & 1) != 0 ? (b < 0 ? -b : b) : tip_of(b);
    return msl_item_at(field, (struct msl_cell){ 2 * first + 1, n });
}

/* Upwards, so to the left, where the lower row lies at its left. Its right end is its left one half a turn on. */
static struct msl_seam row_seam(const struct msl_field *field, int64_t line)
{
    const struct msl_line_on along = { MSL_LINE_V, -1, line };
    const struct end to = left_end(field, line);
    const struct end turned = left_end(field, msl_turned_v(field, line));
    const struct msl_line_on from = msl_line_turned(field, turned.line);
    const muslin_len all = (field->columns + field->rows - 2) * field->pitch + field->block;
    const int64_t above = msl_is_sashed(field) ? line : 2 * msl_line_pair(line) + 1;
    const int64_t below = msl_is_sashed(field) ? line - 1 : above - 2;
    struct msl_seam seam = { .sewn = sewn(field, all - turned.u - to.u, to.is_outside + turned.is_outside),
                             .first = first_in_row(field, below),
                             .second = first_in_row(field, above) };
    place_ends(field, &along, &from, &to.line, &seam);
    return seam;
}

/* Upper left and lower right stop where upper right and lower left come across; those run on to the outside. */
static muslin_len corner_sewn(const struct msl_field *field, enum msl_corner corner)
{
    const muslin_len long_side = field->block + (field->layout == MUSLIN_POINT_LAYOUT_SASH_OUTER ? 2 * field->sash : 0);
    if (corner == MSL_TOP_RIGHT || corner == MSL_BOTTOM_LEFT)
        return sewn(field, long_side, 2);
    const int64_t across = field->columns - 1;
    const int64_t down = field->rows - 1;
    const int64_t more = (across > field->reach ? 0 : across) + (down > field->reach ? 0 : down);
    return sewn(field, long_side + more * field->pitch, (across > field->reach) + (down > field->reach));
}

/* The block or sash at which a corner lies: a part. */
static int64_t part_at_corner(const struct msl_field *field, enum msl_corner corner)
{
    const int64_t right = field->columns - 1;
    const int64_t low = field->rows - 1;
    switch (corner) {
    case MSL_TOP_LEFT:
        return first_part(field);
    case MSL_BOTTOM_RIGHT:
        return msl_part_beside_block(field, msl_block_at(field, right, low), MSL_RIGHT);
    case MSL_TOP_RIGHT:
        return msl_part_beside_block(field, right, MSL_TOP);
    default:
        return msl_part_beside_block(field, msl_block_at(field, 0, low), MSL_BOTTOM);
    }
}

/* Along the first line of the corner's outline, upwards. That is from the line before it to the one after at the upper
 * and lower left, where the corner lies at the seam's left. */
static struct msl_seam corner_seam(const struct msl_field *field, enum msl_corner corner)
{
    const int64_t piece = msl_piece_number(field, MSL_CORNER, (int32_t)corner, 0);
    const int64_t other = msl_own_pieces(field) + part_at_corner(field, corner);
    const int left = corner == MSL_TOP_LEFT || corner == MSL_BOTTOM_LEFT;
    struct msl_bounds bounds;
    msl_bound_piece(field, piece, &bounds);
    const struct msl_line_on *before = &bounds.lines[bounds.count - 1];
    const struct msl_line_on *after = &bounds.lines[1];
    struct msl_seam seam = { .sewn = corner_sewn(field, corner),
                             .first = left ? piece : other,
                             .second = left ? other : piece };
    place_ends(field, &bounds.lines[0], left ? before : after, left ? after : before, &seam);
    return seam;
}

struct msl_seam msl_diagonal_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct msl_field field = msl_field_of(solution, node);
    const int64_t rows = uprights_in(&field);
    const int64_t corners = seam_of_corner(&field, MSL_TOP_LEFT);
    if (k < rows)
        return upright_seam(solution, node, &field, k);
    if (k < corners)
        return row_seam(&field, line_of(&field, k - rows));
    return corner_seam(&field, (enum msl_corner)(k - corners));
}
