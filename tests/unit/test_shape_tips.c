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
    tcase_add_test(tips, a_corner_moves_to_where_its_edges_do);
    tcase_add_test(tips, a_corner_that_needs_no_rounding_says_so);
    suite_add_tcase(suite, tips);
    return suite;
}
