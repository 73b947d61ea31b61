/* test_fit_bed.c - quilts for mattresses: published sizes, and corners measured point by point.
 *
 * SPDX-License-Identifier: MIT */
#include "test_fit.h"

static struct muslin_bed_spec queen(void)
{
    struct muslin_bed_spec spec = MUSLIN_BED_SPEC_INIT;
    spec.mattress_width = WHOLE_IN(60);
    spec.mattress_length = WHOLE_IN(80);
    spec.mattress_depth = WHOLE_IN(12);
    return spec;
}

static struct muslin_bed bed_of(const struct muslin_bed_spec *spec)
{
    struct muslin_bed bed = { .size = (uint32_t)sizeof bed };
    ck_ok(muslin_bed_size(spec, &bed, NULL));
    return bed;
}

/* "Standard quilt sizes for mattresses" (quilting magazine, 2022): 60 x 80 in, 12 in deep, makes 84 x 92 in; 10 in more
 * for a pillow tuck. */
START_TEST(a_queen_size_quilt_hangs_as_deep_as_its_mattress)
{
    /* Example: a mattress 60 x 80 in and 12 in deep: 84 x 92 in, its square corners hang 16.97 in. */
    struct muslin_bed_spec spec = queen();
    struct muslin_bed bed = bed_of(&spec);
    ck_assert_int_eq(bed.finished_width, WHOLE_IN(84));
    ck_assert_int_eq(bed.finished_length, WHOLE_IN(92));
    ck_assert_int_eq(bed.side_drop, WHOLE_IN(12));
    ck_assert_int_eq(bed.foot_drop, WHOLE_IN(12));
    ck_assert(bed.corner_hang * 100 >= 1697 * 8128 && bed.corner_hang * 1000 <= 16971 * 8128);
    ck_assert_uint_eq(bed.warnings, 0);
    spec.pillow_tuck = WHOLE_IN(10);
    ck_assert_int_eq(bed_of(&spec).finished_length, WHOLE_IN(102));
    ck_assert_int_eq(bed_of(&spec).finished_width, WHOLE_IN(84));
}
END_TEST

/* "How to make a bed quilt the right size" (article): the depth, the depth and 3 in, or down to the floor. */
START_TEST(a_drop_follows_its_rule)
{
    struct muslin_bed_spec spec = queen();
    spec.side_drop = WHOLE_IN(7);
    spec.foot_drop = WHOLE_IN(8);
    spec.floor_height = WHOLE_IN(25);
    spec.drop = MUSLIN_DROP_DEPTH;
    ck_assert_int_eq(bed_of(&spec).side_drop, WHOLE_IN(12));
    spec.drop = MUSLIN_DROP_OVER_JOINT;
    ck_assert_int_eq(bed_of(&spec).side_drop, WHOLE_IN(15));
    ck_assert_int_eq(bed_of(&spec).foot_drop, WHOLE_IN(15));
    spec.beyond_depth = WHOLE_IN(4);
    ck_assert_int_eq(bed_of(&spec).side_drop, WHOLE_IN(16));
    spec.drop = MUSLIN_DROP_FLOOR;
    ck_assert_int_eq(bed_of(&spec).side_drop, WHOLE_IN(25));
    ck_assert_int_eq(bed_of(&spec).finished_width, WHOLE_IN(110));
    spec.drop = MUSLIN_DROP_GIVEN;
    ck_assert_int_eq(bed_of(&spec).side_drop, WHOLE_IN(7));
    ck_assert_int_eq(bed_of(&spec).foot_drop, WHOLE_IN(8));
}
END_TEST

/* By adding up: no drop at a footboard, 2 in at the head, 15 in of tuck, 3 in for the quilting. */
START_TEST(each_end_of_the_bed_adds_its_own)
{
    struct muslin_bed_spec spec = queen();
    spec.flags = MUSLIN_BED_FOOT_GIVEN;
    spec.head_drop = WHOLE_IN(2);
    spec.pillow_tuck = WHOLE_IN(15);
    spec.quilting_extra = WHOLE_IN(3);
    struct muslin_bed bed = bed_of(&spec);
    ck_assert_int_eq(bed.foot_drop, 0);
    ck_assert_int_eq(bed.finished_length, WHOLE_IN(97));
    ck_assert_int_eq(bed.top_length, WHOLE_IN(100));
    ck_assert_int_eq(bed.top_width, WHOLE_IN(87));
    ck_assert_int_eq(bed.corner_hang, WHOLE_IN(12));
}
END_TEST

/* 9, 12 and 15 make a right triangle. */
START_TEST(a_corner_lies_on_the_floor_when_it_hangs_lower_than_the_bed_is_high)
{
    struct muslin_bed_spec spec = queen();
    spec.drop = MUSLIN_DROP_GIVEN;
    spec.side_drop = WHOLE_IN(9);
    spec.foot_drop = WHOLE_IN(12);
    ck_assert_int_eq(bed_of(&spec).corner_hang, WHOLE_IN(15));
    ck_assert_int_eq(bed_of(&spec).corner_touches, 0);
    ck_assert_int_eq(bed_of(&spec).corner_clearance, 0);
    spec.floor_height = WHOLE_IN(15);
    ck_assert_int_eq(bed_of(&spec).corner_touches, 0);
    ck_assert_int_eq(bed_of(&spec).corner_clearance, 0);
    spec.floor_height = WHOLE_IN(15) - 1;
    ck_assert_int_eq(bed_of(&spec).corner_touches, 1);
    ck_assert_int_eq(bed_of(&spec).corner_clearance, -1);
    spec.floor_height = WHOLE_IN(20);
    ck_assert_int_eq(bed_of(&spec).corner_clearance, WHOLE_IN(5));
    spec.foot_corner = MUSLIN_FOOT_CORNER_ROUNDED;
    spec.floor_height = WHOLE_IN(12);
    ck_assert_int_eq(bed_of(&spec).corner_touches, 0);
    ck_assert_int_eq(bed_of(&spec).corner_hang, WHOLE_IN(12));
}
END_TEST

/* Whether some tick point of the quilt's corner is as far from the mattress's corner as `hang` says and none is
 * farther. With r the radius, points beyond the circle about (side - r, foot - r) are cut away. */
static int is_farthest(const struct muslin_bed *bed)
{
    muslin_len r = bed->corner_radius;
    muslin_len across = bed->side_drop - r;
    muslin_len along = bed->foot_drop - r;
    int64_t farthest = 0;
    for (muslin_len x = 0; x <= bed->side_drop; x++)
        for (muslin_len y = 0; y <= bed->foot_drop; y++) {
            int cut = x > across && y > along && (x - across) * (x - across) + (y - along) * (y - along) > r * r;
            if (!cut && x * x + y * y > farthest)
                farthest = x * x + y * y;
        }
    muslin_len hang = bed->corner_hang;
    return farthest <= hang * hang && (hang == 0 || (hang - 1) * (hang - 1) < farthest);
}

START_TEST(no_point_of_a_corner_hangs_lower_than_is_said)
{
    struct muslin_bed_spec spec = queen();
    int good = 1;
    spec.drop = MUSLIN_DROP_GIVEN;
    for (spec.foot_corner = 1; spec.foot_corner <= 2; spec.foot_corner++)
        for (spec.side_drop = 0; spec.side_drop <= 24; spec.side_drop++)
            for (spec.foot_drop = 0; spec.foot_drop <= 24; spec.foot_drop++) {
                struct muslin_bed bed = bed_of(&spec);
                muslin_len point = bed.corner_cut_off + bed.corner_radius;
                int64_t twice = 2 * bed.corner_radius * bed.corner_radius;
                int rounded = spec.foot_corner == MUSLIN_FOOT_CORNER_ROUNDED;
                good &= is_farthest(&bed) && point * point >= twice && (point == 0 || (point - 1) * (point - 1) < twice);
                good &= bed.corner_radius == (!rounded                          ? 0
                                              : spec.side_drop < spec.foot_drop ? spec.side_drop
                                                                                : spec.foot_drop);
            }
    ck_assert(good);
}
END_TEST

/* A crib's mattress is 27 x 52 in (trade body's sizes), a twin's 38 x 75 in. */
START_TEST(a_quilt_for_a_crib_keeps_its_warning)
{
    struct muslin_bed_spec spec = queen();
    spec.mattress_width = WHOLE_IN(27);
    spec.mattress_length = WHOLE_IN(52);
    ck_assert_uint_eq(bed_of(&spec).warnings, MUSLIN_WARN_SMALL_QUILT);
    spec.mattress_length = WHOLE_IN(60);
    ck_assert_uint_eq(bed_of(&spec).warnings, MUSLIN_WARN_SMALL_QUILT);
    spec.mattress_width = WHOLE_IN(60);
    ck_assert_uint_eq(bed_of(&spec).warnings, MUSLIN_WARN_SMALL_QUILT);
    spec.floor_height = 1;
    ck_assert_int_eq(bed_of(&spec).corner_clearance, 1 - bed_of(&spec).corner_hang);
    ck_assert_int_eq(bed_of(&spec).corner_touches, 1);
    spec.floor_height = 0;
    spec.mattress_width = WHOLE_IN(27);
    spec.mattress_length++;
    ck_assert_uint_eq(bed_of(&spec).warnings, 0);
    spec.mattress_width = WHOLE_IN(60) + 1;
    spec.mattress_length = WHOLE_IN(52);
    ck_assert_uint_eq(bed_of(&spec).warnings, 0);
}
END_TEST

static muslin_status call_bed(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_bed_size(spec, out, problem);
}
static const struct muslin_bed_spec good_bed = {
    (uint32_t)sizeof good_bed, MUSLIN_BED_FOOT_GIVEN, WHOLE_IN(60), WHOLE_IN(80), WHOLE_IN(12), WHOLE_IN(20),
    WHOLE_IN(3), 1, 2, 3, 4, 5, MUSLIN_DROP_DEPTH, MUSLIN_FOOT_CORNER_ROUNDED
};
static const struct ruled bed = RULED(call_bed, good_bed, muslin_bed);

START_TEST(bed_checks_its_structs)
{
    ck_struct_rules(&bed);
}
END_TEST

START_TEST(bed_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_bed_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_bed_spec, mattress_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_MATTRESS_WIDTH),
        OUTSIDE(muslin_bed_spec, mattress_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_MATTRESS_LENGTH),
        OUTSIDE(muslin_bed_spec, mattress_depth, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_MATTRESS_DEPTH),
        OUTSIDE(muslin_bed_spec, floor_height, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_FLOOR_HEIGHT),
        OUTSIDE(muslin_bed_spec, beyond_depth, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_EXTRA),
        OUTSIDE(muslin_bed_spec, side_drop, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_DROP),
        OUTSIDE(muslin_bed_spec, foot_drop, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_DROP),
        OUTSIDE(muslin_bed_spec, head_drop, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_DROP),
        OUTSIDE(muslin_bed_spec, pillow_tuck, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_PILLOW_TUCK),
        OUTSIDE(muslin_bed_spec, quilting_extra, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_EXTRA),
        NOT_A_CHOICE(muslin_bed_spec, drop, MUSLIN_DROP_GIVEN, MUSLIN_ARG_DROP_RULE),
        NOT_A_CHOICE(muslin_bed_spec, foot_corner, MUSLIN_FOOT_CORNER_ROUNDED, MUSLIN_ARG_FOOT_CORNER),
    };
    ck_refusals(&bed, refusals, COUNT_OF(refusals));
}
END_TEST

static struct muslin_problem refused(const struct muslin_bed_spec *spec)
{
    struct muslin_bed out = { .size = (uint32_t)sizeof out, .side_drop = 77 };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_bed_size(spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out.side_drop, 77);
    return problem;
}

START_TEST(a_rule_needs_what_it_counts_from)
{
    struct muslin_bed_spec spec = queen();
    spec.mattress_depth = 0;
    ck_assert_int_eq(refused(&spec).argument, MUSLIN_ARG_MATTRESS_DEPTH);
    spec.drop = MUSLIN_DROP_OVER_JOINT;
    ck_assert_int_eq(refused(&spec).limit, 1);
    spec.drop = MUSLIN_DROP_FLOOR;
    ck_assert_int_eq(refused(&spec).argument, MUSLIN_ARG_FLOOR_HEIGHT);
    ck_assert_int_eq(refused(&spec).limit, 1);
    spec.floor_height = 1;
    ck_assert_int_eq(bed_of(&spec).side_drop, 1);
    spec.drop = MUSLIN_DROP_GIVEN;
    ck_assert_int_eq(bed_of(&spec).side_drop, 0);
    spec.foot_drop = -1;
    ck_assert_int_eq(refused(&spec).at, 1);
    spec.foot_drop = 0;
    spec.head_drop = -1;
    ck_assert_int_eq(refused(&spec).at, 2);
}
END_TEST

START_TEST(a_quilt_for_a_bed_ends_at_the_largest_size)
{
    struct muslin_bed_spec spec = queen();
    spec.drop = MUSLIN_DROP_GIVEN;
    spec.side_drop = MUSLIN_SIZE_MAX / 2 - 1;
    spec.mattress_width = 2;
    spec.mattress_length = 1;
    spec.foot_drop = MUSLIN_SIZE_MAX - 1;
    ck_assert_int_eq(bed_of(&spec).top_width, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(bed_of(&spec).top_length, MUSLIN_SIZE_MAX);
    spec.quilting_extra = 1;
    ck_assert_int_eq(refused(&spec).argument, MUSLIN_ARG_QUILT_WIDTH);
    ck_assert_int_eq(refused(&spec).value, MUSLIN_SIZE_MAX + 1);
    spec.mattress_width = 1;
    ck_assert_int_eq(refused(&spec).argument, MUSLIN_ARG_QUILT_LENGTH);
}
END_TEST

/* ---- from quilt to mattress -------------------------------------------------------------------------------------- */

static struct muslin_bed_covered_spec quilt_on_queen(muslin_len width, muslin_len length)
{
    struct muslin_bed_covered_spec spec = MUSLIN_BED_COVERED_SPEC_INIT;
    spec.quilt_width = width;
    spec.quilt_length = length;
    spec.mattress_width = WHOLE_IN(60);
    spec.mattress_length = WHOLE_IN(80);
    return spec;
}

static struct muslin_bed_cover cover_of(const struct muslin_bed_covered_spec *spec)
{
    struct muslin_bed_cover cover = { .size = (uint32_t)sizeof cover };
    ck_ok(muslin_bed_covered(spec, &cover, NULL));
    return cover;
}

/* The magazine's figures, turned round. */
START_TEST(a_quilt_hangs_by_what_is_left_of_it)
{
    /* Example: a quilt 84 x 92 in on a mattress 60 x 80 in hangs 12 in on each side and at the foot. */
    struct muslin_bed_covered_spec spec = quilt_on_queen(WHOLE_IN(84), WHOLE_IN(92));
    spec.mattress_depth = WHOLE_IN(12);
    struct muslin_bed_cover cover = cover_of(&spec);
    ck_assert_int_eq(cover.side_drop, WHOLE_IN(12));
    ck_assert_int_eq(cover.foot_drop, WHOLE_IN(12));
    ck_assert(cover.reaches_edges == 1 && cover.reaches_depth == 1);
    ck_assert(cover.short_width == 0 && cover.short_length == 0);
    ck_assert(cover.beyond_side == 0 && cover.beyond_foot == 0); /* 12 in deep: it just reaches the lower edge */
    spec.pillow_tuck = WHOLE_IN(10);
    spec.head_drop = WHOLE_IN(1);
    cover = cover_of(&spec);
    ck_assert_int_eq(cover.foot_drop, WHOLE_IN(1));
    ck_assert_int_eq(cover.short_length, WHOLE_IN(11));
    ck_assert(cover.beyond_side == 0 && cover.beyond_foot == -WHOLE_IN(11));
    ck_assert(cover.reaches_edges == 1 && cover.reaches_depth == 0);
    spec.quilt_width = WHOLE_IN(80);
    spec.head_drop = 0;
    spec.pillow_tuck = 0;
    cover = cover_of(&spec);
    ck_assert_int_eq(cover.short_width, WHOLE_IN(4));
    ck_assert(cover.short_length == 0 && cover.reaches_depth == 0);
}
END_TEST

START_TEST(a_quilt_may_be_smaller_than_its_mattress)
{
    struct muslin_bed_covered_spec spec = quilt_on_queen(WHOLE_IN(60) - 1, WHOLE_IN(80));
    spec.floor_height = 5;
    struct muslin_bed_cover cover = cover_of(&spec);
    ck_assert_int_eq(cover.side_drop, -1);
    ck_assert_int_eq(cover.beyond_side, -1); /* of a depth that is not known */
    ck_assert_int_eq(cover.short_width, 1);
    ck_assert(cover.reaches_edges == 0 && cover.reaches_depth == 0);
    ck_assert(cover.corner_hang == 0 && cover.corner_clearance == 5);
    spec.quilt_width = WHOLE_IN(60) + 1;
    cover = cover_of(&spec);
    ck_assert_int_eq(cover.side_drop, 0);
    ck_assert(cover.reaches_edges == 1 && cover.reaches_depth == 1);
    spec.quilt_length = WHOLE_IN(80) - 1;
    ck_assert_int_eq(cover_of(&spec).foot_drop, -1);
    ck_assert_int_eq(cover_of(&spec).reaches_edges, 0);
    spec.quilt_length = WHOLE_IN(70);
    cover = cover_of(&spec);
    ck_assert_int_eq(cover.foot_drop, -WHOLE_IN(10));
    ck_assert_int_eq(cover.short_length, WHOLE_IN(10));
    ck_assert_int_eq(cover.reaches_edges, 0);
    spec.quilt_width = WHOLE_IN(50);
    ck_assert_int_eq(cover_of(&spec).side_drop, -WHOLE_IN(5));
}
END_TEST

/* 8, 15 and 17 make a right triangle. */
START_TEST(a_quilt_in_hand_may_touch_the_floor)
{
    struct muslin_bed_covered_spec spec = quilt_on_queen(WHOLE_IN(76), WHOLE_IN(95));
    ck_assert_int_eq(cover_of(&spec).corner_hang, WHOLE_IN(17));
    ck_assert(cover_of(&spec).corner_touches == 0 && cover_of(&spec).corner_clearance == 0);
    spec.floor_height = WHOLE_IN(17);
    ck_assert_int_eq(cover_of(&spec).corner_touches, 0);
    spec.floor_height = WHOLE_IN(17) - 1;
    ck_assert(cover_of(&spec).corner_touches == 1 && cover_of(&spec).corner_clearance == -1);
    spec.floor_height = 1;
    ck_assert_int_eq(cover_of(&spec).corner_clearance, 1 - WHOLE_IN(17));
    spec.floor_height = WHOLE_IN(16);
    ck_assert_int_eq(cover_of(&spec).corner_touches, 1);
    ck_assert_int_eq(cover_of(&spec).corner_clearance, -WHOLE_IN(1));
    spec.foot_corner = MUSLIN_FOOT_CORNER_ROUNDED;
    ck_assert_int_eq(cover_of(&spec).corner_hang, WHOLE_IN(15));
    ck_assert_int_eq(cover_of(&spec).corner_touches, 0);
    spec.quilt_width = WHOLE_IN(100);
    ck_assert_int_eq(cover_of(&spec).corner_hang, WHOLE_IN(20));
}
END_TEST

START_TEST(a_small_quilt_or_a_small_mattress_warns)
{
    struct muslin_bed_covered_spec spec = quilt_on_queen(WHOLE_IN(84), WHOLE_IN(92));
    ck_assert_uint_eq(cover_of(&spec).warnings, 0);
    spec.quilt_width = WHOLE_IN(40);
    spec.quilt_length = WHOLE_IN(60);
    ck_assert_uint_eq(cover_of(&spec).warnings, MUSLIN_WARN_SMALL_QUILT);
    spec.quilt_length = WHOLE_IN(70);
    ck_assert_uint_eq(cover_of(&spec).warnings, 0);
    spec.mattress_width = WHOLE_IN(27);
    spec.mattress_length = WHOLE_IN(52);
    ck_assert_uint_eq(cover_of(&spec).warnings, MUSLIN_WARN_SMALL_QUILT);
}
END_TEST

static muslin_status call_cover(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_bed_covered(spec, out, problem);
}
static const struct muslin_bed_covered_spec good_cover = {
    (uint32_t)sizeof good_cover, 0, WHOLE_IN(84), WHOLE_IN(92), WHOLE_IN(60), WHOLE_IN(80), WHOLE_IN(12), WHOLE_IN(14),
    1, 2, MUSLIN_FOOT_CORNER_SQUARE, 0
};
static const struct ruled cover = RULED(call_cover, good_cover, muslin_bed_cover);

START_TEST(cover_checks_its_structs)
{
    ck_struct_rules(&cover);
    ck_no_flag_known(&cover);
}
END_TEST

START_TEST(cover_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_bed_covered_spec, quilt_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_bed_covered_spec, quilt_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_bed_covered_spec, mattress_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_MATTRESS_WIDTH),
        OUTSIDE(muslin_bed_covered_spec, mattress_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_MATTRESS_LENGTH),
        OUTSIDE(muslin_bed_covered_spec, mattress_depth, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MATTRESS_DEPTH),
        OUTSIDE(muslin_bed_covered_spec, floor_height, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_FLOOR_HEIGHT),
        OUTSIDE(muslin_bed_covered_spec, head_drop, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_DROP),
        OUTSIDE(muslin_bed_covered_spec, pillow_tuck, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_PILLOW_TUCK),
        NOT_A_CHOICE(muslin_bed_covered_spec, foot_corner, MUSLIN_FOOT_CORNER_ROUNDED, MUSLIN_ARG_FOOT_CORNER),
        REFUSAL(muslin_bed_covered_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    ck_refusals(&cover, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(the_largest_quilts_and_beds_are_still_right)
{
    const muslin_len most = MUSLIN_SIZE_MAX;
    struct muslin_bed_covered_spec spec = { (uint32_t)sizeof spec, 0, 1, 1, most, most, most, most, most, most, 1, 0 };
    ck_assert_int_eq(cover_of(&spec).foot_drop, 1 - 3 * most);
    ck_assert_int_eq(cover_of(&spec).short_width, 3 * most - 1);
    ck_assert_int_eq(cover_of(&spec).short_length, 4 * most - 1);
    spec = (struct muslin_bed_covered_spec){ (uint32_t)sizeof spec, 0, most, most, 2, 1, 0, 0, 0, 0, 1, 0 };
    ck_assert_int_eq(cover_of(&spec).side_drop, most / 2 - 1);
    ck_assert_int_eq(cover_of(&spec).foot_drop, most - 1);
}
END_TEST

/* ---- initial values ---------------------------------------------------------------------------------------------- */

INIT_CALL(bed)
INIT_CALL(bed_covered)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_bed_spec first = MUSLIN_BED_SPEC_INIT;
    const struct muslin_bed_covered_spec second = MUSLIN_BED_COVERED_SPEC_INIT;
    ck_init_rules(init_bed, &first, (uint32_t)sizeof first);
    ck_init_rules(init_bed_covered, &second, (uint32_t)sizeof second);
}
END_TEST

void add_fit_bed(Suite *suite)
{
    TCase *beds = tcase_create("bed");
    tcase_add_test(beds, a_queen_size_quilt_hangs_as_deep_as_its_mattress);
    tcase_add_test(beds, a_drop_follows_its_rule);
    tcase_add_test(beds, each_end_of_the_bed_adds_its_own);
    tcase_add_test(beds, a_corner_lies_on_the_floor_when_it_hangs_lower_than_the_bed_is_high);
    tcase_add_test(beds, no_point_of_a_corner_hangs_lower_than_is_said);
    tcase_add_test(beds, a_quilt_for_a_crib_keeps_its_warning);
    tcase_add_test(beds, bed_checks_its_structs);
    tcase_add_test(beds, bed_refuses_what_lies_outside_its_ranges);
    tcase_add_test(beds, a_rule_needs_what_it_counts_from);
    tcase_add_test(beds, a_quilt_for_a_bed_ends_at_the_largest_size);
    tcase_add_test(beds, a_quilt_hangs_by_what_is_left_of_it);
    tcase_add_test(beds, a_quilt_may_be_smaller_than_its_mattress);
    tcase_add_test(beds, a_quilt_in_hand_may_touch_the_floor);
    tcase_add_test(beds, a_small_quilt_or_a_small_mattress_warns);
    tcase_add_test(beds, cover_checks_its_structs);
    tcase_add_test(beds, cover_refuses_what_lies_outside_its_ranges);
    tcase_add_test(beds, the_largest_quilts_and_beds_are_still_right);
    tcase_add_test(beds, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, beds);
}
