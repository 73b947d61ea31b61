/* solution_set_in.c - strips with mitred corners, solved.
 *
 * SPDX-License-Identifier: MIT
 *
 * A strip of no width is no strip. Every strip is a trapezoid between the box of the whole and the box of the centre:
 * where a neighbour is missing, its end comes out square by itself. */
#include "solution_inside.h"

#include "root.h"
#include "surd.h"

enum { CORNERS = 4 };

/* Corners of a box, and those of the centre's box. */
enum { LOW_LOW = 0, HIGH_X = 1, HIGH_Y = 2, INNER = 4 };

struct set_in {
    muslin_len width[MSL_EDGES]; /* of the strip on each side; 0: none */
    const struct msl_size *centre;
    muslin_len seam;             /* what one of its own seams takes: m */
};

static struct set_in read_set_in(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    muslin_len allowance = msl_value_of(solution, MSL_ALLOWANCE);
    struct set_in s = { .centre = msl_size_of(solution, (uint32_t)args[SET_IN_CENTRE]),
                        .seam = msl_allowances(solution, allowance, allowance) };
    for (int side = MSL_LEFT; side < MSL_EDGES; side++)
        if (args[SET_IN_WIDTHS + side] != 0)
            s.width[side] = msl_value_of(solution, args[SET_IN_WIDTHS + side]);
    return s;
}

static int has(const struct set_in *s, int side)
{
    return s->width[side] != 0;
}

/* The strips that meet in a corner. */
static int beside(int corner)
{
    return (corner & HIGH_X) != 0 ? MSL_RIGHT : MSL_LEFT;
}

static int above_or_below(int corner)
{
    return (corner & HIGH_Y) != 0 ? MSL_TOP : MSL_BOTTOM;
}

static int has_mitre(const struct set_in *s, int corner)
{
    return has(s, beside(corner)) && has(s, above_or_below(corner));
}

/* ---- size ------------------------------------------------------------------------------------------------------- */

/* An edge of the whole: the strip's, or the centre's with the ends of the strips on both sides of it. */
static void find_edge(struct msl_size *size, const struct set_in *s, int edge, muslin_len allowance)
{
    int before = edge < MSL_TOP ? MSL_TOP : MSL_LEFT;
    int64_t ends = has(s, before) + has(s, before + 1);
    size->edge[edge] = has(s, edge) ? allowance : s->centre->edge[edge];
    size->along[edge] = has(s, edge) ? 1 : s->centre->along[edge] + ends;
    if (!has(s, edge) && ends != 0)
        size->edge[edge] = msl_edge_with(size->edge[edge], allowance);
}

/* A strip is as long as what it is sewn to; only the allowances can differ. */
static void check_strip(struct msl_solving *solving, uint32_t node, const struct set_in *s, int side,
                        muslin_len allowance)
{
    struct msl_meeting meeting = { .second = side + 1,
                                   .first_edge = s->centre->edge[side],
                                   .second_edge = allowance };
    msl_check_edges(solving, node, &meeting);
}

void msl_set_in_size(struct msl_solving *solving, uint32_t node)
{
    const struct muslin_solution *solution = solving->solution;
    const int32_t *args = msl_node_args(solution->quilt, node);
    const struct set_in s = read_set_in(solution, node);
    const muslin_len allowance = msl_value_of(solution, MSL_ALLOWANCE);
    struct msl_size *size = msl_size_of(solution, node);
    *size = *s.centre;
    size->exact &= msl_measures_exact(solution, node);
    size->width += s.width[MSL_LEFT] + s.width[MSL_RIGHT];
    size->height += s.width[MSL_TOP] + s.width[MSL_BOTTOM];
    size->across += has(&s, MSL_LEFT) + has(&s, MSL_RIGHT);
    size->down += has(&s, MSL_TOP) + has(&s, MSL_BOTTOM);
    for (int side = MSL_LEFT; side < MSL_EDGES; side++) {
        find_edge(size, &s, side, allowance);
        if (args[SET_IN_WIDTHS + side] == 0)
            continue;
        msl_want_node_size(solving, MUSLIN_ARG_BORDER_WIDTH, s.width[side]);
        check_strip(solving, node, &s, side, allowance);
    }
    size->patches += msl_set_in_pieces(solution, node);
}

struct msl_part msl_set_in_part(const struct muslin_solution *solution, uint32_t node)
{
    const struct set_in s = read_set_in(solution, node);
    return (struct msl_part){ .node = (uint32_t)msl_node_args(solution->quilt, node)[SET_IN_CENTRE],
                              .x = s.width[MSL_LEFT],
                              .y = s.width[MSL_BOTTOM] };
}

/* ---- what is where ---------------------------------------------------------------------------------------------- */

/* A corner of the whole, or of the centre. */
static muslin_len corner_x(const struct set_in *s, int corner)
{
    muslin_len left = (corner & INNER) != 0 ? s->width[MSL_LEFT] : 0;
    muslin_len right = (corner & INNER) != 0 ? 0 : s->width[MSL_RIGHT];
    return (corner & HIGH_X) != 0 ? s->width[MSL_LEFT] + s->centre->width + right : left;
}

static muslin_len corner_y(const struct set_in *s, int corner)
{
    muslin_len bottom = (corner & INNER) != 0 ? s->width[MSL_BOTTOM] : 0;
    muslin_len top = (corner & INNER) != 0 ? 0 : s->width[MSL_TOP];
    return (corner & HIGH_Y) != 0 ? s->width[MSL_BOTTOM] + s->centre->height + top : bottom;
}

/* Seams are numbered strips first, left, right, top, bottom, then mitres, top left, top right, bottom left, bottom
 * right, without those that there are not. Here all of them, as corners from 4 on. */
enum { SEAMS_MOST = MSL_EDGES + CORNERS };

static int mitre_corner(int seam)
{
    return (seam - MSL_EDGES) ^ HIGH_Y;
}

static int has_seam(const struct set_in *s, int seam)
{
    return seam < MSL_EDGES ? has(s, seam) : has_mitre(s, mitre_corner(seam));
}

/* How many there are before this one: its number. */
static int32_t seams_before(const struct set_in *s, int seam)
{
    int32_t before = 0;
    for (int k = 0; k < seam; k++)
        before += has_seam(s, k);
    return before;
}

/* The one of this number. */
static int seam_of(const struct set_in *s, int64_t number)
{
    int seam = 0;
    while (!has_seam(s, seam) || seams_before(s, seam) != number)
        seam++;
    return seam;
}

int64_t msl_set_in_pieces(const struct muslin_solution *solution, uint32_t node)
{
    const struct set_in s = read_set_in(solution, node);
    return seams_before(&s, MSL_EDGES);
}

int msl_set_in_ends_alike(const struct muslin_solution *solution, uint32_t node, int64_t piece)
{
    const struct set_in s = read_set_in(solution, node);
    const int end = seam_of(&s, piece) < MSL_TOP ? MSL_TOP : MSL_LEFT;
    return s.width[end] == s.width[end + 1];
}

/* ---- outlines --------------------------------------------------------------------------------------------------- */

/* Counter-clockwise. */
static const uint8_t corners_of[MSL_EDGES][CORNERS] = {
    { LOW_LOW, INNER, INNER | HIGH_Y, HIGH_Y },
    { HIGH_X, HIGH_X | HIGH_Y, INNER | HIGH_X | HIGH_Y, INNER | HIGH_X },
    { HIGH_X | HIGH_Y, HIGH_Y, INNER | HIGH_Y, INNER | HIGH_X | HIGH_Y },
    { LOW_LOW, HIGH_X, INNER | HIGH_X, INNER }
};

/* The seam along the edge between two neighbouring corners of a strip; -1: the outside. */
static int32_t seam_between(const struct set_in *s, int side, int from, int to)
{
    if ((from & to & INNER) != 0)
        return seams_before(s, side);
    int mitre = MSL_EDGES + ((from & (HIGH_X | HIGH_Y)) ^ HIGH_Y);
    int is_end = ((from ^ to) & INNER) != 0;
    return is_end && has_seam(s, mitre) ? seams_before(s, mitre) : -1;
}

/* What an edge that is straight on stands out when it is cut, in all m: half a tick up at the left and below. */
static muslin_len beyond_edge(const struct set_in *s, int high)
{
    return high ? s->seam / 2 : msl_divided_up(s->seam, 2);
}

/* How far a mitred end reaches, along the strip, beyond the finished corner when it is cut. With a neighbour n wide,
 * its own width w and both edges offset by m / 2, that is m (sqrt(n n + w w) + n) / 2 w at the outer corner, whose tip
 * is left whole, and m (sqrt(n n + w w) - n) / 2 w at the inner one; nearest tick. */
static muslin_len beyond_mitre(const struct set_in *s, int side, int corner)
{
    muslin_len own = s->width[side];
    muslin_len neighbour = s->width[side < MSL_TOP ? above_or_below(corner) : beside(corner)];
    muslin_len lean = (corner & INNER) != 0 ? -s->seam * neighbour : s->seam * neighbour;
    struct msl_surd surd = { .whole = lean, .sign = 1, .divisor = 2 * own };
    surd.radicand = msl_wide_multiply(s->seam * s->seam, own * own + neighbour * neighbour);
    struct msl_exact exact = msl_surd_exact(&surd);
    return exact.floor + exact.upper_half;
}

static muslin_len moved(muslin_len value, int high, muslin_len by)
{
    return high ? value + by : value - by;
}

/* Moves a finished corner of a strip to where it lies as cut. Across the strip, its inner corners move the other way
 * than its outer ones. */
static void move_out(const struct set_in *s, int side, int corner, muslin_len *x, muslin_len *y)
{
    int upright = side < MSL_TOP;
    int inner = (corner & INNER) != 0;
    int x_high = ((corner & HIGH_X) != 0) != (upright && inner);
    int y_high = ((corner & HIGH_Y) != 0) != (!upright && inner);
    muslin_len x_by = beyond_edge(s, x_high);
    muslin_len y_by = beyond_edge(s, y_high);
    if (has_mitre(s, corner))
        *(upright ? &y_by : &x_by) = beyond_mitre(s, side, corner);
    *x = moved(*x, x_high, x_by);
    *y = moved(*y, y_high, y_by);
}

void msl_set_in_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                        struct msl_ring *ring)
{
    const struct set_in s = read_set_in(solution, node);
    const int side = seam_of(&s, piece);
    ring->fabric = (uint32_t)msl_node_args(solution->quilt, node)[SET_IN_FABRICS + side];
    ring->region = side + 1;
    ring->corners = CORNERS;
    ring->exact = 1;
    for (int i = 0; i < CORNERS; i++) {
        int corner = corners_of[side][i];
        ring->x[i] = corner_x(&s, corner);
        ring->y[i] = corner_y(&s, corner);
        ring->seam[i] = seam_between(&s, side, corner, corners_of[side][(i + 1) % CORNERS]);
        if (stage == MUSLIN_STAGE_RAW)
            move_out(&s, side, corner, &ring->x[i], &ring->y[i]);
    }
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

int64_t msl_set_in_seams(const struct muslin_solution *solution, uint32_t node)
{
    const struct set_in s = read_set_in(solution, node);
    return seams_before(&s, SEAMS_MOST);
}

/* A strip to the centre, along its whole raw edge: what the corners leave open is counted. */
static struct msl_seam strip_seam(const struct muslin_solution *solution, const struct set_in *s, int side)
{
    int from = INNER | (side == MSL_RIGHT ? HIGH_X : side == MSL_TOP ? HIGH_Y : LOW_LOW);
    int to = from | (side < MSL_TOP ? HIGH_Y : HIGH_X);
    const struct msl_size *centre = s->centre;
    int64_t strip = seams_before(s, side);
    int64_t middle = seams_before(s, MSL_EDGES);
    int strip_first = side == MSL_LEFT || side == MSL_TOP;
    muslin_len length = side < MSL_TOP
        ? centre->height + msl_allowances(solution, centre->edge[MSL_TOP], centre->edge[MSL_BOTTOM])
        : centre->width + msl_allowances(solution, centre->edge[MSL_LEFT], centre->edge[MSL_RIGHT]);
    return (struct msl_seam){ corner_x(s, from), corner_y(s, from), corner_x(s, to), corner_y(s, to), length,
                              strip_first ? strip : middle, strip_first ? middle : strip };
}

/* Two strips, upwards; sewn one allowance beyond both ends. No square root of a whole number ends on a half, so the
 * nearest tick is clear. */
static struct msl_seam mitre_seam(const struct set_in *s, int corner)
{
    int at_left = (corner & HIGH_X) == 0;
    int at_top = (corner & HIGH_Y) != 0;
    int from = at_top ? corner | INNER : corner;
    int to = at_top ? corner : corner | INNER;
    int64_t upright = seams_before(s, beside(corner));
    int64_t level = seams_before(s, above_or_below(corner));
    uint64_t width = (uint64_t)s->width[beside(corner)];
    uint64_t height = (uint64_t)s->width[above_or_below(corner)];
    uint64_t rest;
    muslin_len length = (muslin_len)msl_root(width * width + height * height, &rest);
    if (rest > (uint64_t)length)
        length++;
    return (struct msl_seam){ corner_x(s, from), corner_y(s, from), corner_x(s, to), corner_y(s, to),
                              length + s->seam, at_left ? upright : level, at_left ? level : upright };
}

struct msl_seam msl_set_in_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct set_in s = read_set_in(solution, node);
    int seam = seam_of(&s, k);
    return seam < MSL_EDGES ? strip_seam(solution, &s, seam) : mitre_seam(&s, mitre_corner(seam));
}

int64_t msl_set_in_beside(const struct muslin_solution *solution, uint32_t node, enum msl_edge edge)
{
    const struct set_in s = read_set_in(solution, node);
    return has(&s, (int)edge) ? seams_before(&s, (int)edge) : -1;
}
