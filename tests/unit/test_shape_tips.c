/* test_shape_tips.c - corners of any angles as cut, with every kind of tip, against lines crossed in double.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "test_shape.h"

#include "shape_moved.h"

enum { SIDES_MOST = 4, ROWS_MOST = 2 * SIDES_MOST };

/* A place, or a direction. */
struct spot {
    double x, y;
};

static struct spot sum(struct spot a, double times, struct spot b)
{
    const struct spot spot = { a.x + times * b.x, a.y + times * b.y };
    return spot;
}

static double product(struct spot a, struct spot b)
{
    return a.x * b.x + a.y * b.y;
}

/* Where a . p = s and b . p = t. */
static struct spot crossing(struct spot a, double s, struct spot b, double t)
{
    const double below = a.x * b.y - a.y * b.x;
    const struct spot spot = { (s * b.y - t * a.y) / below, (a.x * t - b.x * s) / below };
    return spot;
}

static struct spot mirrored(struct spot a, struct spot along)
{
    return sum(sum((struct spot){ 0, 0 }, -1, a), 2 * product(a, along), along);
}

/* A corner: the directions of both its edges, and those out of the piece, and how far they are moved. */
struct tip {
    struct spot in, out, in_normal, out_normal;
    double in_seam, out_seam;
};

static struct spot direction(struct spot from, struct spot to)
{
    const double length = hypot(to.x - from.x, to.y - from.y);
    const struct spot spot = { (to.x - from.x) / length, (to.y - from.y) / length };
    return spot;
}

static struct spot turned_right(struct spot a)
{
    const struct spot spot = { a.y, -a.x };
    return spot;
}

/* The places of a cut corner, seen from the finished one, as shape.h says of each kind of tip; their number. */
static int places_of(const struct tip *tip, int32_t kind, struct spot places[2])
{
    const struct spot sharp = crossing(tip->in_normal, tip->in_seam, tip->out_normal, tip->out_seam);
    const struct spot in_mirrored = mirrored(tip->in_normal, tip->out);
    const struct spot out_mirrored = mirrored(tip->out_normal, tip->in);
    const struct spot none = { 0, 0 };
    places[0] = sharp;
    if (product(tip->in, tip->out) >= 0 || kind == MUSLIN_CORNER_TIP_SHARP)
        return 1;
    switch (kind) {
    case MUSLIN_CORNER_TIP_BLUNT:
        places[0] = sum(sum(none, tip->in_seam, tip->in_normal), tip->out_seam, tip->in);
        places[1] = sum(sum(none, tip->out_seam, tip->out_normal), -tip->in_seam, tip->out);
        break;
    case MUSLIN_CORNER_TIP_TRIM_ARRIVING:
        places[0] = crossing(tip->in_normal, tip->in_seam, out_mirrored, tip->out_seam);
        places[1] = crossing(tip->out_normal, tip->out_seam, out_mirrored, tip->out_seam);
        break;
    default:
        places[0] = crossing(tip->in_normal, tip->in_seam, in_mirrored, tip->in_seam);
        places[1] = crossing(tip->out_normal, tip->out_seam, in_mirrored, tip->in_seam);
    }
    return 2;
}

/* A triangle, or a rectangle's corners each moved a bit, counter-clockwise, with no edge shorter than 20 thousand ticks
 * and no angle sharper than about 20 degrees. */
static int32_t draw_piece(uint64_t *state, struct muslin_corner_spec *rows)
{
    static const int64_t near_corners[][2] = { { 10, 10 }, { 80, 10 }, { 80, 60 }, { 10, 60 } };
    const int32_t sides = draw_from(state, 0, 1) == 0 ? 3 : 4;
    const int64_t left_out = draw_from(state, 0, 3);
    for (int32_t i = 0; i < sides; i++) {
        const struct muslin_corner_spec initial = MUSLIN_CORNER_SPEC_INIT;
        const int64_t *near = near_corners[(left_out + i) % 4];
        rows[i] = initial;
        rows[i].x = 1000 * near[0] + draw_from(state, -10000, 10000);
        rows[i].y = 1000 * near[1] + draw_from(state, -10000, 10000);
        rows[i].allowance = draw_from(state, 0, 2000);
        rows[i].take_up = draw_from(state, 0, 201);
        rows[i].tip = (int32_t)draw_from(state, MUSLIN_CORNER_TIP_SHARP, MUSLIN_CORNER_TIP_TRIM_LEAVING);
    }
    return sides;
}

static struct spot spot_of(const struct muslin_corner_spec *row)
{
    const struct spot spot = { (double)row->x, (double)row->y };
    return spot;
}

static double seam_of(const struct muslin_corner_spec *row)
{
    return (double)row->allowance + (double)row->take_up / 2;
}

static struct tip tip_of(const struct muslin_corner_spec *before, const struct muslin_corner_spec *here,
                         const struct muslin_corner_spec *after)
{
    struct tip tip;
    tip.in = direction(spot_of(before), spot_of(here));
    tip.out = direction(spot_of(here), spot_of(after));
    tip.in_normal = turned_right(tip.in);
    tip.out_normal = turned_right(tip.out);
    tip.in_seam = seam_of(before);
    tip.out_seam = seam_of(here);
    return tip;
}

/* To the nearest tick, but for what double cannot tell. */
static void ck_near(muslin_len found, double expected)
{
    ck_assert_msg(fabs((double)found - expected) < 0.5001, "%lld, not %f", (long long)found, expected);
}

/* ---- how far a template reaches ---------------------------------------------------------------------------------- */

static double moved_radius(const struct muslin_corner_spec *row)
{
    return (double)row->radius + (row->curve == MUSLIN_CURVE_CONVEX ? seam_of(row) : -seam_of(row));
}

static struct spot made_at(const struct muslin_template_corner *row)
{
    const struct spot spot = { (double)row->x, (double)row->y };
    return spot;
}

/* How far one direction is to the left of another, 0 to a whole turn. */
static double turn_to(struct spot from, struct spot to)
{
    const double turn = atan2(from.x * to.y - from.y * to.x, product(from, to));
    return turn < 0 ? turn + 8 * atan(1) : turn;
}

/* Corners and bulging arcs, along a direction of length 1. */
static double reach_of(const struct muslin_corner_spec *rows, const struct muslin_template_corner *made, size_t count,
                       struct spot along)
{
    double most = -1e9;
    for (size_t i = 0; i < count; i++) {
        const struct spot start = made_at(&made[i]), end = made_at(&made[(i + 1) % count]);
        const struct spot centre = { (double)made[i].centre_x, (double)made[i].centre_y };
        most = fmax(most, product(start, along));
        if (made[i].curve == MUSLIN_CURVE_CONVEX &&
            turn_to(sum(start, -1, centre), along) <= turn_to(sum(start, -1, centre), sum(end, -1, centre)))
            most = fmax(most, product(centre, along) + moved_radius(&rows[made[i].corner]));
    }
    return most;
}

/* From end to end, up to a tick. */
static void ck_extent(muslin_len found, const struct muslin_corner_spec *rows, const struct muslin_template_corner *made,
                      size_t count, struct spot along)
{
    const struct spot back = { -along.x, -along.y };
    const double extent = reach_of(rows, made, count, along) + reach_of(rows, made, count, back);
    ck_assert_msg((double)found > extent - 0.001 && (double)found < extent + 1.001, "%lld, not %f", (long long)found,
                  extent);
}

static void ck_measured(const struct muslin_corner_spec *rows, int32_t n, const struct muslin_template_corner *made,
                        size_t count, uint64_t *state)
{
    struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    struct muslin_shape_piece piece = { .size = (uint32_t)sizeof piece };
    const struct spot none = { 0, 0 };
    int64_t area = 0;
    spec.grain_x = draw_from(state, -10, 10);
    spec.grain_y = draw_from(state, 1, 10);
    ck_ok(muslin_shape_measure(rows, sizeof rows[0], (size_t)n, &spec, &to_tick, &piece, NULL));
    const struct spot grain = direction(none, (struct spot){ (double)spec.grain_x, (double)spec.grain_y });
    ck_extent(piece.cut_width, rows, made, count, (struct spot){ 1, 0 });
    ck_extent(piece.cut_height, rows, made, count, (struct spot){ 0, 1 });
    ck_extent(piece.rectangle_along, rows, made, count, grain);
    ck_extent(piece.rectangle_across, rows, made, count, turned_right(grain));
    for (size_t i = 0; i < count; i++) {
        const struct muslin_template_corner *next = &made[(i + 1) % count];
        area += made[i].x * next->y - made[i].y * next->x;
    }
    ck_assert_int_eq(piece.cut_area, area);
    for (int32_t edge = 0; edge < n; edge++) {
        muslin_len along = 0, across = 0;
        if (rows[edge].radius > 0)
            continue;
        ck_ok(muslin_shape_foundation(rows, sizeof rows[0], (size_t)n, edge, 0, &to_tick, &along, &across, NULL));
        const struct spot laid = direction(spot_of(&rows[edge]), spot_of(&rows[(edge + 1) % n]));
        ck_extent(along, rows, made, count, laid);
        ck_extent(across, rows, made, count, turned_right(laid));
    }
}

START_TEST(corners_of_any_angle_are_cut_as_their_tip_says)
{
    uint64_t state = 61;
    for (int32_t i = 0; i < 500; i++) {
        struct muslin_corner_spec rows[SIDES_MOST];
        struct muslin_template_corner made[ROWS_MOST];
        size_t count = 0;
        size_t next = 0;
        const int32_t sides = draw_piece(&state, rows);
        memset(made, 0, sizeof made);
        ck_ok(muslin_shape_template(rows, sizeof rows[0], (size_t)sides, 0, &to_tick, made, sizeof made[0], ROWS_MOST,
                                    &count, NULL));
        for (int32_t corner = 0; corner < sides; corner++) {
            struct spot places[2];
            const struct tip tip = tip_of(&rows[(corner + sides - 1) % sides], &rows[corner],
                                          &rows[(corner + 1) % sides]);
            const int n = places_of(&tip, rows[corner].tip, places);
            for (int place = 0; place < n; place++, next++) {
                ck_assert_uint_lt(next, count);
                ck_assert_int_eq(made[next].corner, corner);
                ck_assert_int_eq(made[next].has_seam, place == n - 1);
                ck_near(made[next].x, (double)rows[corner].x + places[place].x);
                ck_near(made[next].y, (double)rows[corner].y + places[place].y);
            }
        }
        ck_assert_uint_eq(next, count);
        ck_measured(rows, sides, made, count, &state);
    }
}
END_TEST

/* In the middle of a slanting edge: one place straight out, or two where the allowances differ. */
START_TEST(a_corner_in_an_edge_moves_straight_out)
{
    uint64_t state = 64;
    for (int32_t i = 0; i < 300; i++) {
        struct muslin_corner_spec rows[4];
        struct muslin_template_corner made[ROWS_MOST];
        size_t count = 0;
        const int64_t x = draw_from(&state, 10000, 90000), y = draw_from(&state, 10000, 90000);
        const int64_t places[][2] = { { 0, 0 }, { 2 * x, 0 }, { x, y }, { 0, 2 * y } };
        const int is_level = draw_from(&state, 0, 3) == 0;
        for (int32_t row = 0; row < 4; row++) {
            const struct muslin_corner_spec corner = CORNER(0, places[row][0], places[row][1]);
            rows[row] = corner;
            rows[row].allowance = draw_from(&state, 0, 2000);
            rows[row].take_up = draw_from(&state, 0, 201);
        }
        if (is_level) {
            rows[2].allowance = rows[1].allowance;
            rows[2].take_up = rows[1].take_up;
        }
        const int steps = seam_of(&rows[1]) != seam_of(&rows[2]);
        const struct spot out = turned_right(direction(spot_of(&rows[1]), spot_of(&rows[3])));
        memset(made, 0, sizeof made);
        ck_ok(muslin_shape_template(rows, sizeof rows[0], 4, 0, &to_tick, made, sizeof made[0], ROWS_MOST, &count,
                                    NULL));
        ck_assert_uint_eq(count, steps ? 5 : 4);
        for (int place = 0; place <= steps; place++) {
            ck_assert_int_eq(made[2 + place].corner, 2);
            ck_near(made[2 + place].x, (double)x + seam_of(&rows[1 + place]) * out.x);
            ck_near(made[2 + place].y, (double)y + seam_of(&rows[1 + place]) * out.y);
        }
    }
}
END_TEST

/* A triangle of a tick without allowances: its two sharp corners have two places each, though these are one. */
START_TEST(the_smallest_triangle_has_blunt_tips_too)
{
    struct muslin_corner_spec rows[] = { CORNER(0, 0, 0), CORNER(0, 1, 0), CORNER(0, 0, 1) };
    struct muslin_template_corner made[ROWS_MOST];
    size_t count = 0;
    memset(made, 0, sizeof made);
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        rows[i].allowance = 0;
        rows[i].tip = MUSLIN_CORNER_TIP_BLUNT;
    }
    ck_ok(muslin_shape_template(ROWS(rows), 0, &to_tick, made, sizeof made[0], ROWS_MOST, &count, NULL));
    ck_assert_uint_eq(count, 5);
}
END_TEST

/* An edge towards the centre of an arc that it leaves, past the centre by 4 and 5 fifths of a tick, which is near
 * enough, and by 8, which is not. The arc's corners lie within a tick of its circle: 3001^2 + 4000^2 = 5000.6^2 and
 * 3002^2 + 4001^2 = 5002^2. */
START_TEST(an_edge_passes_the_centre_within_a_tick)
{
    static const struct {
        int64_t x, y, radius;
        muslin_status status;
    } cases[] = { { 3001, 4000, 5001, MUSLIN_OK }, { 3002, 4001, 5002, MUSLIN_OK },
                  { 3002, 4000, 5001, MUSLIN_ERR_SHAPE } };
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        const int64_t x = cases[i].x, y = cases[i].y, radius = cases[i].radius;
        const struct muslin_corner_spec rows[] = { CORNER(0, 9000 + x - 1500, 9000),
                                                   ARC(0, 9000 + radius, 9000, CONVEX, 9000, 9000, radius),
                                                   CORNER(0, 9000 + x, 9000 + y),
                                                   CORNER(0, 9000 + x - 1500, 9000 + y - 2000) };
        struct muslin_problem problem = PROBLEM;
        size_t count = 0;
        ck_status(muslin_shape_template(ROWS(rows), 0, &to_tick, NULL, 0, 0, &count, &problem), cases[i].status);
        ck_assert_int_eq(problem.at, cases[i].status == MUSLIN_OK ? 0 : 2);
    }
}
END_TEST

/* A slice of a disc of 25 thousand ticks whose straight edges are moved out by more. */
START_TEST(edges_moved_beyond_a_slice_are_too_wide)
{
    struct muslin_corner_spec rows[] = { CORNER(0, 0, 0), ARC(0, 24000, 7000, CONVEX, 0, 0, 25000),
                                         CORNER(0, 7000, 24000) };
    rows[0].allowance = 30000;
    rows[1].allowance = 0;
    ck_template_refuses(rows, MUSLIN_ERR_SEAM_TOO_WIDE, 1);
}
END_TEST

/* ---- arcs -------------------------------------------------------------------------------------------------------- */

enum { CORNERS_MOST = 5, AWAY = 400000 };

/* A piece about a middle, and where its corners are as cut, all seen from there. */
struct arced {
    int32_t corners;
    struct muslin_corner_spec rows[CORNERS_MOST];
    struct spot cut[CORNERS_MOST];
};

static void add_edge(struct arced *piece, uint64_t *state, int64_t x, int64_t y, int32_t curve, int64_t centre_x,
                     int64_t radius)
{
    struct muslin_corner_spec row = MUSLIN_CORNER_SPEC_INIT;
    row.x = x;
    row.y = y;
    row.curve = curve;
    row.centre_x = centre_x;
    row.radius = radius;
    row.allowance = draw_from(state, 0, 2000);
    row.take_up = draw_from(state, 0, 201);
    piece->rows[piece->corners++] = row;
}

/* How far along a line an arc about a point beside it, `beside` away, meets it. */
static double leg(const struct muslin_corner_spec *arc, double beside)
{
    return sqrt(moved_radius(arc) * moved_radius(arc) - beside * beside);
}

/* The part of a disc above a level line, 7, 15, 20 or 24 of 25 parts above the middle. */
static void draw_segment(struct arced *piece, uint64_t *state)
{
    static const int64_t sides[] = { 7, 15, 20, 24 };
    const int64_t part = draw_from(state, 1000, 8000), which = draw_from(state, 0, 3);
    const int64_t up = part * sides[which], side = part * sides[3 - which];
    add_edge(piece, state, -side, up, MUSLIN_CURVE_STRAIGHT, 0, 0);
    add_edge(piece, state, side, up, MUSLIN_CURVE_CONVEX, 0, 25 * part);
    const double level = (double)up - seam_of(&piece->rows[0]);
    for (int32_t i = 0; i < 2; i++)
        piece->cut[i] = (struct spot){ (i == 0 ? -1 : 1) * leg(&piece->rows[1], level), level };
}

/* A square without a quarter disc about one corner. */
static void draw_background(struct arced *piece, uint64_t *state)
{
    const int64_t radius = draw_from(state, 20000, 100000), side = radius + draw_from(state, 20000, 100000);
    add_edge(piece, state, radius, 0, MUSLIN_CURVE_STRAIGHT, 0, 0);
    add_edge(piece, state, side, 0, MUSLIN_CURVE_STRAIGHT, 0, 0);
    add_edge(piece, state, side, side, MUSLIN_CURVE_STRAIGHT, 0, 0);
    add_edge(piece, state, 0, side, MUSLIN_CURVE_STRAIGHT, 0, 0);
    add_edge(piece, state, 0, radius, MUSLIN_CURVE_CONCAVE, 0, radius);
    const double below = seam_of(&piece->rows[0]), left = seam_of(&piece->rows[3]);
    const double right = (double)side + seam_of(&piece->rows[1]), above = (double)side + seam_of(&piece->rows[2]);
    piece->cut[0] = (struct spot){ leg(&piece->rows[4], below), -below };
    piece->cut[1] = (struct spot){ right, -below };
    piece->cut[2] = (struct spot){ right, above };
    piece->cut[3] = (struct spot){ -left, above };
    piece->cut[4] = (struct spot){ -left, leg(&piece->rows[4], left) };
}

/* A slice of a disc, from its middle, between two directions with whole numbers. */
static void draw_slice(struct arced *piece, uint64_t *state)
{
    static const int64_t ways[][2] = { { 25, 0 }, { 24, 7 }, { 20, 15 }, { 15, 20 }, { 7, 24 }, { 0, 25 }, { -7, 24 } };
    const int64_t part = draw_from(state, 1000, 8000);
    const int64_t first = draw_from(state, 0, 3), last = draw_from(state, first + 2, 6);
    add_edge(piece, state, 0, 0, MUSLIN_CURVE_STRAIGHT, 0, 0);
    add_edge(piece, state, part * ways[first][0], part * ways[first][1], MUSLIN_CURVE_CONVEX, 0, 25 * part);
    add_edge(piece, state, part * ways[last][0], part * ways[last][1], MUSLIN_CURVE_STRAIGHT, 0, 0);
    const struct spot out = { (double)ways[first][0] / 25, (double)ways[first][1] / 25 };
    const struct spot back = { -(double)ways[last][0] / 25, -(double)ways[last][1] / 25 };
    const struct spot beside = turned_right(out), beyond = turned_right(back), none = { 0, 0 };
    const double out_seam = seam_of(&piece->rows[0]), back_seam = seam_of(&piece->rows[2]);
    piece->cut[0] = crossing(beyond, back_seam, beside, out_seam);
    piece->cut[1] = sum(sum(none, out_seam, beside), leg(&piece->rows[1], out_seam), out);
    piece->cut[2] = sum(sum(none, back_seam, beyond), -leg(&piece->rows[1], back_seam), back);
}

/* What lies between two circles of 15 and 20 parts, whose middles lie 9 and 16 to either side of their corners at 12
 * above and below; or, where both lie on the left, a sickle. */
static void draw_lens(struct arced *piece, uint64_t *state)
{
    const int64_t part = draw_from(state, 3000, 8000);
    const int is_sickle = draw_from(state, 0, 1) == 0;
    add_edge(piece, state, 0, -12 * part, MUSLIN_CURVE_CONVEX, -9 * part, 15 * part);
    add_edge(piece, state, 0, 12 * part, is_sickle ? MUSLIN_CURVE_CONCAVE : MUSLIN_CURVE_CONVEX,
             (is_sickle ? -16 : 16) * part, 20 * part);
    const double from = -9.0 * (double)part, to = (is_sickle ? -16.0 : 16.0) * (double)part, apart = to - from;
    const double r = moved_radius(&piece->rows[0]), q = moved_radius(&piece->rows[1]);
    const double along = (r * r - q * q + apart * apart) / (2 * apart), up = sqrt(r * r - along * along);
    piece->cut[0] = (struct spot){ from + along, -up };
    piece->cut[1] = (struct spot){ from + along, up };
}

/* Turned by quarters, and away from the edge of what may be drawn. */
static struct spot laid(struct spot a, int64_t turns)
{
    for (; turns > 0; turns--)
        a = (struct spot){ -a.y, a.x };
    return (struct spot){ a.x + AWAY, a.y + AWAY };
}

static void lay_rows(struct arced *piece, int64_t turns)
{
    for (int32_t i = 0; i < piece->corners; i++) {
        struct muslin_corner_spec *row = &piece->rows[i];
        const struct spot place = laid((struct spot){ (double)row->x, (double)row->y }, turns);
        const struct spot centre = laid((struct spot){ (double)row->centre_x, (double)row->centre_y }, turns);
        row->x = llround(place.x);
        row->y = llround(place.y);
        if (row->radius > 0) {
            row->centre_x = llround(centre.x);
            row->centre_y = llround(centre.y);
        }
    }
}

START_TEST(corners_of_arcs_are_cut_where_the_moved_edges_meet)
{
    void (*const drawn[])(struct arced *, uint64_t *) = { draw_segment, draw_background, draw_slice, draw_lens };
    uint64_t state = 63;
    for (int32_t i = 0; i < 600; i++) {
        struct arced piece = { .corners = 0 };
        struct muslin_template_corner made[CORNERS_MOST];
        size_t count = 0;
        const int64_t turns = draw_from(&state, 0, 3);
        memset(made, 0, sizeof made);
        drawn[i % 4](&piece, &state);
        lay_rows(&piece, turns);
        ck_ok(muslin_shape_template(piece.rows, sizeof piece.rows[0], (size_t)piece.corners, 0, &to_tick, made,
                                    sizeof made[0], CORNERS_MOST, &count, NULL));
        ck_assert_uint_eq(count, (size_t)piece.corners);
        for (int32_t corner = 0; corner < piece.corners; corner++) {
            const struct muslin_corner_spec *row = &piece.rows[corner];
            const struct spot cut = laid(piece.cut[corner], turns);
            ck_near(made[corner].x, cut.x);
            ck_near(made[corner].y, cut.y);
            ck_assert_int_eq(made[corner].curve, row->curve);
            if (row->radius > 0)
                ck_assert_int_eq(made[corner].radius, (int64_t)floor(moved_radius(row) + 0.5));
            ck_assert_int_eq(made[corner].centre_x, row->centre_x);
            ck_assert_int_eq(made[corner].centre_y, row->centre_y);
        }
        ck_measured(piece.rows, piece.corners, made, count, &state);
    }
}
END_TEST

/* Both edges are moved alike; in one line they move straight out. */
START_TEST(a_corner_moves_to_where_its_edges_do)
{
    uint64_t state = 62;
    for (int32_t i = 0; i < 2000; i++) {
        const int64_t most = INT64_C(1) << draw_from(&state, 1, 30);
        int64_t a = draw_from(&state, -most, most), b = draw_from(&state, -most, most);
        const int64_t c = draw_from(&state, -most, most), d = draw_from(&state, -most, most);
        const int64_t seam = draw_from(&state, 0, INT64_C(1) << 20);
        const double in_length = hypot((double)a, (double)b), out_length = hypot((double)c, (double)d);
        const double sine = ((double)a * (double)d - (double)b * (double)c) / (in_length * out_length);
        if (in_length < 1 || out_length < 1 || fabs(sine) < 0.05)
            continue;
        const struct msl_moved moved = msl_corner_moved(a, b, c, d, seam);
        const struct spot in = { (double)b / in_length, (double)-a / in_length };
        const struct spot out = { (double)d / out_length, (double)-c / out_length };
        const struct spot place = crossing(in, (double)seam / 2, out, (double)seam / 2);
        ck_near(moved.x, place.x);
        ck_near(moved.y, place.y);
        if (fabs(place.x - round(place.x)) > 0.001 || fabs(place.y - round(place.y)) > 0.001)
            ck_assert_int_eq(moved.exact, 0);
        const struct msl_moved straight = msl_corner_moved(a, b, a, b, seam);
        ck_near(straight.x, (double)seam / 2 * in.x);
        ck_near(straight.y, (double)seam / 2 * in.y);
    }
}
END_TEST

/* Of 3, 4 and 5: out by (4, -3) and, turned left, (3, 4), in fifths of the allowance. */
START_TEST(a_corner_that_needs_no_rounding_says_so)
{
    for (int64_t allowance = 0; allowance <= 20; allowance++) {
        const struct msl_moved moved = msl_corner_moved(3, 4, -4, 3, 2 * allowance);
        ck_near(moved.x, (double)allowance * 7 / 5);
        ck_near(moved.y, (double)allowance / 5);
        ck_assert_int_eq(moved.exact, allowance % 5 == 0);
        ck_assert_int_eq(msl_corner_moved(1, 0, 0, 1, allowance).exact, allowance % 2 == 0);
        ck_assert_int_eq(msl_corner_moved(3, 4, 6, 8, 2 * allowance).exact, allowance % 5 == 0);
    }
}
END_TEST

Suite *shape_tips_suite(void);

Suite *shape_tips_suite(void)
{
    Suite *suite = suite_create("shape_tips");
    TCase *tips = tcase_create("tips");
    tcase_add_test(tips, corners_of_any_angle_are_cut_as_their_tip_says);
    tcase_add_test(tips, corners_of_arcs_are_cut_where_the_moved_edges_meet);
    tcase_add_test(tips, a_corner_in_an_edge_moves_straight_out);
    tcase_add_test(tips, the_smallest_triangle_has_blunt_tips_too);
    tcase_add_test(tips, an_edge_passes_the_centre_within_a_tick);
    tcase_add_test(tips, edges_moved_beyond_a_slice_are_too_wide);
    tcase_add_test(tips, a_corner_moves_to_where_its_edges_do);
    tcase_add_test(tips, a_corner_that_needs_no_rounding_says_so);
    suite_add_tcase(suite, tips);
    return suite;
}
