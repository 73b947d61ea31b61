/* test_supplies.c - seams to be sewn, thread and stitches: published figures, counting, the edges of the ranges.
 *
 * SPDX-License-Identifier: MIT */
#include "test_supplies.h"

#define MM(number) ((muslin_len)(number) * MUSLIN_TICKS_PER_MM)
#define CM(number) MM((number) * 10)

/* What a failing call says; its output must be left alone. */
static struct muslin_problem failing(const struct ruled *ruled, const void *spec, muslin_status status)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, ruled->out_size);
    ck_status(ruled->call(spec, &out, &problem), status);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    return problem;
}

/* ---- seams to be sewn ------------------------------------------------------------------------------------------- */

static struct muslin_piecing sew(const struct muslin_piecing_spec *spec)
{
    struct muslin_piecing out = { .size = (uint32_t)sizeof out };
    ck_ok(muslin_piecing_plan(spec, &out, NULL));
    return out;
}

START_TEST(two_tops_from_seven_sets_take_1921_inches_of_seam)
{
    /* Example: 7 sets of 6 strips 40 in long, and 2 tops of 3 x 3 blocks of two segments, 12 in finished: 1400 in in
     * the sets, 225 in in the blocks, 150 in in the rows, 146 in between the rows: 1921 in. */
    struct muslin_piecing_spec spec = MUSLIN_PIECING_SPEC_INIT;
    spec.sets = 7;
    spec.strips_per_set = 6;
    spec.tops = 2;
    spec.columns = 3;
    spec.rows = 3;
    spec.segments_per_block = 2;
    spec.block_width = WHOLE_IN(12);
    spec.block_height = WHOLE_IN(12);
    struct muslin_piecing out = sew(&spec);
    ck_assert_int_eq(out.in_sets, WHOLE_IN(1400));    /* 7 x 5 x 40 */
    ck_assert_int_eq(out.in_blocks, WHOLE_IN(225));   /* 18 x 12 1/2 */
    ck_assert_int_eq(out.in_rows, WHOLE_IN(150));     /* 2 x 3 x 2 x 12 1/2 */
    ck_assert_int_eq(out.between_rows, WHOLE_IN(146)); /* 2 x 2 x 36 1/2 */
    ck_assert_int_eq(out.total, WHOLE_IN(1921));
    ck_assert_int_eq(out.seams, 35 + 18 + 12 + 4);
}
END_TEST

/* Each seam of one top, one by one. */
static int agrees_with_sewing(const struct muslin_piecing_spec *s)
{
    struct muslin_piecing out = { .size = (uint32_t)sizeof out };
    muslin_len seam = 2 * s->allowance + s->take_up;
    muslin_len sewn = 0;
    int64_t seams = 0;
    if (muslin_piecing_plan(s, &out, NULL) != MUSLIN_OK)
        return 0;
    for (int64_t strip = 1; strip < s->strips_per_set * s->sets; strip++)
        if (strip % s->strips_per_set != 0) {
            sewn += s->strip_length;
            seams++;
        }
    for (int64_t top = 0; top < s->tops; top++)
        for (int64_t row = 0; row < s->rows; row++) {
            int64_t joins = s->columns * s->segments_per_block - 1;
            sewn += joins * (s->block_height + seam);
            sewn += row > 0 ? s->columns * s->block_width + seam : 0;
            seams += joins + (row > 0);
        }
    return out.total == sewn && out.seams == seams &&
           out.total == out.in_sets + out.in_blocks + out.in_rows + out.between_rows;
}

START_TEST(seams_are_those_one_would_sew_one_by_one)
{
    struct muslin_piecing_spec spec = MUSLIN_PIECING_SPEC_INIT;
    spec.strip_length = 11;
    spec.block_width = 7;
    spec.block_height = 5;
    spec.allowance = 2;
    spec.take_up = 1;
    for (spec.sets = 0; spec.sets <= 2; spec.sets++)
        for (spec.strips_per_set = 1; spec.strips_per_set <= 3; spec.strips_per_set++)
            for (spec.tops = 0; spec.tops <= 2; spec.tops++)
                for (spec.columns = 1; spec.columns <= 3; spec.columns++)
                    for (spec.rows = 1; spec.rows <= 3; spec.rows++)
                        for (spec.segments_per_block = 1; spec.segments_per_block <= 2; spec.segments_per_block++)
                            ck_assert(agrees_with_sewing(&spec));
}
END_TEST

static muslin_status call_piecing(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_piecing_plan(spec, out, problem);
}
static const struct muslin_piecing_spec good_piecing = {
    (uint32_t)sizeof good_piecing, 0, 7, 6, WHOLE_IN(40), 2, 3, 3, 2, WHOLE_IN(12), WHOLE_IN(12), 2032, 10
};
static const struct ruled piecing = RULED(call_piecing, good_piecing, muslin_piecing);

START_TEST(piecing_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_piecing_spec, sets, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_SETS),
        OUTSIDE(muslin_piecing_spec, strips_per_set, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_STRIPS_PER_SET),
        OUTSIDE(muslin_piecing_spec, strip_length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_LENGTH),
        OUTSIDE(muslin_piecing_spec, tops, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_TOPS),
        OUTSIDE(muslin_piecing_spec, columns, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_piecing_spec, rows, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_piecing_spec, segments_per_block, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_SEGMENTS_PER_BLOCK),
        OUTSIDE(muslin_piecing_spec, block_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_WIDTH),
        OUTSIDE(muslin_piecing_spec, block_height, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_HEIGHT),
        OUTSIDE(muslin_piecing_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_piecing_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
    };
    ck_struct_rules(&piecing);
    ck_no_flag_known(&piecing);
    ck_refusals(&piecing, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(seams_too_long_to_count_are_an_overflow)
{
    struct muslin_piecing_spec spec = MUSLIN_PIECING_SPEC_INIT;
    /* 4 x (2^30 - 1) x 2^30 is 2^62 - 2^32: the most that fits */
    spec.sets = 4;
    spec.strips_per_set = MUSLIN_SIZE_MAX;
    spec.strip_length = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(sew(&spec).total, 4 * (MUSLIN_SIZE_MAX - 1) * MUSLIN_SIZE_MAX);
    /* a tick more than what is left is too much for the sum; the same alone is not */
    spec.tops = 1;
    spec.rows = 2;
    spec.block_width = MUSLIN_SIZE_MAX;
    spec.allowance = 0;
    spec.columns = 3;
    spec.block_height = 0;
    ck_assert_int_eq(sew(&spec).between_rows, 3 * MUSLIN_SIZE_MAX);
    spec.columns = 4;
    struct muslin_problem problem = failing(&piecing, &spec, MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAMS);
    ck_assert_int_eq(problem.value, 4 * (MUSLIN_SIZE_MAX - 1) * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(problem.limit, MUSLIN_LENGTH_MAX - 4 * MUSLIN_SIZE_MAX);
    spec.sets = 5;
    problem = failing(&piecing, &spec, MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.value, 5 * (MUSLIN_SIZE_MAX - 1));
    ck_assert_int_eq(problem.limit, MUSLIN_LENGTH_MAX / MUSLIN_SIZE_MAX);
    /* 2^62 - 1 is (2^31 - 1) x 3 x 715827883. */
    spec.tops = 0;
    spec.sets = MUSLIN_COUNT_MAX;
    spec.strips_per_set = 4;
    spec.strip_length = 715827883;
    ck_assert_int_eq(sew(&spec).total, MUSLIN_LENGTH_MAX);
    spec.strip_length++;
    failing(&piecing, &spec, MUSLIN_ERR_OVERFLOW);
}
END_TEST

START_TEST(a_factor_of_nothing_leaves_nothing_to_overflow)
{
    struct muslin_piecing_spec spec = MUSLIN_PIECING_SPEC_INIT;
    spec.tops = MUSLIN_COUNT_MAX;
    spec.columns = 1;
    spec.rows = MUSLIN_COUNT_MAX;
    spec.allowance = 0;
    /* one segment a block, one block a row: nothing but rows of no width are joined */
    ck_assert_int_eq(sew(&spec).total, 0);
    ck_assert_int_eq(sew(&spec).seams, MUSLIN_COUNT_MAX * (MUSLIN_COUNT_MAX - 1));
    spec.columns = 3;
    failing(&piecing, &spec, MUSLIN_ERR_OVERFLOW);
    spec.columns = 1;
    spec.segments_per_block = 2;
    failing(&piecing, &spec, MUSLIN_ERR_OVERFLOW);
    spec.tops = 0;
    ck_assert_int_eq(sew(&spec).seams, 0);
    /* Nor do the blocks count, of which none is sewn: 2 x (2^31 - 1) x (2^30 + 1) are more than 2^62. */
    spec.segments_per_block = 1;
    spec.tops = MUSLIN_COUNT_MAX;
    spec.columns = 2;
    spec.rows = (INT64_C(1) << 30) + 1;
    ck_assert_int_eq(sew(&spec).seams, MUSLIN_LENGTH_MAX);
}
END_TEST

/* ---- thread ----------------------------------------------------------------------------------------------------- */

static struct muslin_thread thread_for(const struct muslin_thread_spec *spec)
{
    struct muslin_thread out = { .size = (uint32_t)sizeof out };
    ck_ok(muslin_thread_plan(spec, &out, NULL));
    return out;
}

START_TEST(a_seam_takes_two_and_a_half_times_its_length)
{
    /* Example: 220 cm of seam: 550 cm of thread, with 15 % waste 632.5 cm; 540 cm and 15 % are 621 cm. */
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    spec.seam = CM(220);
    struct muslin_thread out = thread_for(&spec);
    ck_assert_int_eq(out.ratio_thousandths, 2500);
    ck_assert_int_eq(out.thread, CM(550));
    ck_assert_int_eq(out.with_waste, MM(6325));
    ck_assert_int_eq(out.needle, MM(6325) / 2);
    ck_assert_int_eq(out.bobbin_thread, MM(6325) / 2);
    ck_assert_int_eq(out.bobbins, 0);
    ck_assert_int_eq(out.spools, 0);
    spec.seam = CM(216);
    out = thread_for(&spec);
    ck_assert_int_eq(out.thread, CM(540));
    ck_assert_int_eq(out.with_waste, CM(621));
}
END_TEST

/* Sewing thread consumption guide (textile blog): C = 2 + 2 T S; 0.5 mm and 2.5 mm are sizes of ours. */
START_TEST(the_formula_counts_the_thickness_once_a_stitch_for_each_thread)
{
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    spec.method = MUSLIN_THREAD_METHOD_FORMULA;
    spec.seam = MM(1000);
    spec.thickness = MM(1) / 2;
    spec.stitch_length = MM(5) / 2;
    spec.waste = 0;
    struct muslin_thread out = thread_for(&spec);
    ck_assert_int_eq(out.ratio_thousandths, 2400);
    ck_assert_int_eq(out.thread, MM(2400));
    ck_assert_int_eq(out.with_waste, MM(2400));
    ck_assert_int_eq(out.needle, MM(1200));
    spec.thickness = 0;
    ck_assert_int_eq(thread_for(&spec).thread, MM(2000));
}
END_TEST

/* 100 m of seam by 5 : 2 are 250 m, half of it 125 m: 3 bobbins of 50 m with 25 m left, 2 spools of 200 m with 150 m
 * left; half of 400 m reaches for 160 m of seam, 150 m of bobbins for 120 m. */
START_TEST(bobbins_and_spools_are_counted_up_and_tell_their_slack)
{
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    spec.seam = MM(100000);
    spec.waste = 0;
    spec.bobbin = MM(50000);
    spec.spool = MM(200000);
    struct muslin_thread out = thread_for(&spec);
    ck_assert_int_eq(out.bobbins, 3);
    ck_assert_int_eq(out.left_on_bobbin, MM(25000));
    ck_assert_int_eq(out.bobbin_longer_by, MM(20000));
    ck_assert_int_eq(out.spools, 2);
    ck_assert_int_eq(out.left_on_spool, MM(150000));
    ck_assert_int_eq(out.spool_longer_by, MM(60000));
    spec.seam += out.bobbin_longer_by;
    ck_assert_int_eq(thread_for(&spec).bobbins, 3);
    ck_assert_int_eq(thread_for(&spec).bobbin_longer_by, 0);
    spec.seam++;
    ck_assert_int_eq(thread_for(&spec).bobbins, 4);
    spec.seam = 6;
    spec.spool = 1; /* ticks: 15 of thread, that much on each spool */
    ck_assert_int_eq(thread_for(&spec).spools, 15);
    ck_assert_int_eq(thread_for(&spec).left_on_spool, 0);
}
END_TEST

/* The same seam with bobbins bought wound: 125 m from the needle are one spool of 200 m, which reaches for 160 m. */
START_TEST(ready_bobbins_leave_the_spools_to_the_needle)
{
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    spec.flags = MUSLIN_THREAD_READY_BOBBINS;
    spec.seam = MM(100000);
    spec.waste = 0;
    spec.bobbin = MM(50000);
    spec.spool = MM(200000);
    struct muslin_thread out = thread_for(&spec);
    ck_assert_int_eq(out.bobbins, 3);
    ck_assert_int_eq(out.spools, 1);
    ck_assert_int_eq(out.left_on_spool, MM(75000));
    ck_assert_int_eq(out.spool_longer_by, MM(60000));
}
END_TEST

START_TEST(thread_is_rounded_up_once_and_so_is_each_half)
{
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    spec.seam = 1;
    struct muslin_thread out = thread_for(&spec);
    ck_assert_int_eq(out.thread, 3);      /* 2.5 */
    ck_assert_int_eq(out.with_waste, 3);  /* 2.875, not 3 x 1.15 up */
    ck_assert_int_eq(out.needle, 2);
    ck_assert_int_eq(out.bobbin_thread, 2);
    spec.ratio_above = 2;
    spec.ratio_below = 3;
    ck_assert_int_eq(thread_for(&spec).ratio_thousandths, 667);
}
END_TEST

/* A tick more from each half than the spool has would be a second spool, but the whole thread is as long as the spool,
 * an odd number of ticks. */
START_TEST(spools_hold_the_whole_thread_and_not_two_rounded_halves)
{
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    spec.seam = 81281;
    spec.ratio_above = 1;
    spec.ratio_below = 1;
    spec.waste = 0;
    spec.spool = 81281;
    struct muslin_thread out = thread_for(&spec);
    ck_assert(out.with_waste == 81281 && out.needle == 40641 && out.bobbin_thread == 40641);
    ck_assert(out.spools == 1 && out.left_on_spool == 0 && out.spool_longer_by == 0);
    spec.seam++;
    out = thread_for(&spec);
    ck_assert(out.spools == 2 && out.left_on_spool == 81280);
    /* from ready bobbins the spool has the needle's half alone: 81281 of twice as much seam */
    spec.flags = MUSLIN_THREAD_READY_BOBBINS;
    out = thread_for(&spec);
    ck_assert(out.spools == 1 && out.left_on_spool == 81281 - 40641 && out.spool_longer_by == 2 * 81281 - 81282);
}
END_TEST

START_TEST(no_seam_takes_no_thread)
{
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    spec.bobbin = MM(1000);
    spec.spool = MM(1000);
    struct muslin_thread out = thread_for(&spec);
    ck_assert_int_eq(out.with_waste + out.needle + out.bobbins + out.spools, 0);
    ck_assert_int_eq(out.bobbin_longer_by + out.spool_longer_by, 0);
}
END_TEST

START_TEST(the_longest_seam_is_still_right)
{
    const muslin_len longest = MUSLIN_LENGTH_MAX / 2;
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    spec.seam = longest;
    spec.ratio_above = 2;
    spec.ratio_below = 1;
    spec.waste = 0;
    spec.bobbin = longest;
    spec.spool = longest;
    struct muslin_thread out = thread_for(&spec);
    ck_assert_int_eq(out.with_waste, 2 * longest);
    ck_assert_int_eq(out.bobbins, 1);
    ck_assert_int_eq(out.spools, 2);
    ck_assert_int_eq(out.left_on_spool, 0);
    ck_assert_int_eq(out.spool_longer_by, 0);
    /* what a bobbin would reach for lies beyond the longest seam, so its slack ends there */
    spec.seam = longest - 5;
    spec.ratio_above = 1;
    out = thread_for(&spec);
    ck_assert_int_eq(out.spool_longer_by, 5);
    ck_assert_int_eq(out.bobbin_longer_by, 5);
    spec.ratio_below = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(thread_for(&spec).spool_longer_by, 5);
}
END_TEST

static muslin_status call_thread(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_thread_plan(spec, out, problem);
}
static const struct muslin_thread_spec good_thread = {
    (uint32_t)sizeof good_thread, 0, WHOLE_IN(1921), 5, 2, 160, 640, MM(50000), MM(200000),
    MUSLIN_THREAD_METHOD_FORMULA, 150000
};
static const struct ruled thread = RULED(call_thread, good_thread, muslin_thread);

START_TEST(thread_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_thread_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_thread_spec, seam, 0, MUSLIN_LENGTH_MAX / 2, MUSLIN_ARG_LENGTH),
        OUTSIDE(muslin_thread_spec, ratio_above, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_RATIO),
        OUTSIDE(muslin_thread_spec, ratio_below, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_RATIO),
        OUTSIDE(muslin_thread_spec, thickness, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_THICKNESS),
        OUTSIDE(muslin_thread_spec, stitch_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STITCH_LENGTH),
        OUTSIDE(muslin_thread_spec, bobbin, 0, MUSLIN_LENGTH_MAX / 2, MUSLIN_ARG_BOBBIN),
        OUTSIDE(muslin_thread_spec, spool, 0, MUSLIN_LENGTH_MAX / 2, MUSLIN_ARG_SPOOL),
        NOT_A_CHOICE(muslin_thread_spec, method, 2, MUSLIN_ARG_METHOD),
        BEYOND(muslin_thread_spec, waste, -1, 0, MUSLIN_ARG_WASTE),
        BEYOND(muslin_thread_spec, waste, 10 * MUSLIN_PPM + 1, 10 * MUSLIN_PPM, MUSLIN_ARG_WASTE),
    };
    ck_struct_rules(&thread);
    ck_refusals_at(&thread, 0, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(what_breaks_a_range_is_said_in_inches_and_shares)
{
    struct muslin_thread_spec spec = good_thread;
    spec.stitch_length = -8128;
    ck_assert_ptr_nonnull(strstr(failing(&thread, &spec, MUSLIN_ERR_RANGE).text, "Stitch length is -1 in"));
    spec = good_thread;
    spec.bobbin = -8128;
    ck_assert_ptr_nonnull(strstr(failing(&thread, &spec, MUSLIN_ERR_RANGE).text, "Thread on a bobbin is -1 in"));
    spec = good_thread;
    spec.spool = -8128;
    ck_assert_ptr_nonnull(strstr(failing(&thread, &spec, MUSLIN_ERR_RANGE).text, "Thread on a spool is -1 in"));
    spec = good_thread;
    spec.waste = -1;
    ck_assert_ptr_nonnull(strstr(failing(&thread, &spec, MUSLIN_ERR_RANGE).text, "-1 parts per million"));
}
END_TEST

START_TEST(thread_too_long_to_count_is_an_overflow)
{
    struct muslin_thread_spec spec = good_thread;
    spec.method = MUSLIN_THREAD_METHOD_RATIO;
    spec.seam = MUSLIN_LENGTH_MAX / 2;
    spec.ratio_above = 2;
    spec.ratio_below = 1;
    spec.waste = 0;
    ck_assert_int_eq(thread_for(&spec).with_waste, MUSLIN_LENGTH_MAX - 1);
    spec.waste = 1;
    struct muslin_problem problem = failing(&thread, &spec, MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LENGTH);
    ck_assert_int_eq(problem.value, MUSLIN_LENGTH_MAX / 2);
    ck_assert_int_eq(problem.limit, 0);
    spec.ratio_above = MUSLIN_COUNT_MAX;
    spec.waste = 10 * MUSLIN_PPM;
    failing(&thread, &spec, MUSLIN_ERR_OVERFLOW);
}
END_TEST

/* 2 (17 + 593) / 17 of the seam. Two bobbins, and later three spools, hold more thread than can be counted, so their
 * slack ends with the longest seam whose thread can be: floor((2^62 - 1) x 17 / 1220). */
/* By hand: a bobbin of 2^61 - 1 and as much from the spool are 2^62 - 2 ticks, of which a seam takes three times its
 * length: 1537228672809129300 ticks and 2 left. A bobbin of a tick is filled for each. */
START_TEST(a_bobbin_may_be_the_longest_or_a_tick)
{
    struct muslin_thread_spec spec = good_thread;
    spec.method = MUSLIN_THREAD_METHOD_RATIO;
    spec.seam = 1;
    spec.ratio_above = 3;
    spec.ratio_below = 1;
    spec.waste = 0;
    spec.bobbin = MUSLIN_LENGTH_MAX / 2;
    ck_assert_int_eq(thread_for(&spec).bobbins, 1);
    ck_assert_int_eq(thread_for(&spec).bobbin_longer_by, INT64_C(1537228672809129300) - 1);
    spec.bobbin = spec.spool = 1;
    ck_assert_int_eq(thread_for(&spec).bobbins, 2);
    ck_assert_int_ge(thread_for(&spec).spools, 2);
}
END_TEST

START_TEST(slack_ends_where_the_thread_can_no_longer_be_counted)
{
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    const muslin_len longest = INT64_C(64261198617430815);
    spec.method = MUSLIN_THREAD_METHOD_FORMULA;
    spec.waste = 0;
    spec.thickness = 593;
    spec.stitch_length = 17;
    spec.seam = INT64_C(42644105977678184);
    spec.bobbin = INT64_C(1511617900359265280);
    spec.spool = MUSLIN_LENGTH_MAX / 5 * 2;
    struct muslin_thread out = thread_for(&spec);
    ck_assert(out.bobbins == 2 && out.spools == 2);
    ck_assert_int_eq(out.bobbin_longer_by, longest - spec.seam);
    spec.seam += out.bobbin_longer_by;
    out = thread_for(&spec);
    ck_assert(out.bobbins == 2 && out.spools == 3);
    ck_assert(out.bobbin_longer_by == 0 && out.spool_longer_by == 0);
    spec.seam++;
    failing(&thread, &spec, MUSLIN_ERR_OVERFLOW);
}
END_TEST

/* ---- stitches --------------------------------------------------------------------------------------------------- */

START_TEST(two_and_a_half_millimetres_are_ten_stitches_to_the_inch)
{
    /* Example: stitches of 2.5 mm make 10.160 in an inch, exactly. */
    int64_t thousandths = 0;
    int32_t exact = 0;
    ck_ok(muslin_stitch_count(WHOLE_IN(1), 800, 3, MUSLIN_DIRECTION_NEAREST, &thousandths, &exact, NULL));
    ck_assert_int_eq(thousandths, 10160);
    ck_assert_int_eq(exact, 1);
    ck_ok(muslin_stitch_count(WHOLE_IN(1), 800, 1, MUSLIN_DIRECTION_UP, &thousandths, &exact, NULL));
    ck_assert_int_eq(thousandths, 10200);
    ck_assert_int_eq(exact, 0);
    ck_ok(muslin_stitch_count(WHOLE_IN(1), 800, 2, MUSLIN_DIRECTION_DOWN, &thousandths, NULL, NULL));
    ck_assert_int_eq(thousandths, 10160);
    ck_ok(muslin_stitch_count(WHOLE_IN(1), 800, 0, MUSLIN_DIRECTION_DOWN, &thousandths, NULL, NULL));
    ck_assert_int_eq(thousandths, 10000);
    ck_ok(muslin_stitch_count(MUSLIN_SIZE_MAX, 1, 3, MUSLIN_DIRECTION_UP, &thousandths, &exact, NULL));
    ck_assert_int_eq(thousandths, 1000 * MUSLIN_SIZE_MAX);
}
END_TEST

START_TEST(stitches_refuse_what_cannot_be_counted)
{
    const struct {
        muslin_len length;
        muslin_len stitch;
        int32_t decimals;
        int32_t direction;
        muslin_status status;
        int32_t argument;
    } wrong[] = {
        { -1, 800, 3, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_LENGTH },
        { MUSLIN_SIZE_MAX + 1, 800, 3, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_LENGTH },
        { 8128, 0, 3, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_STITCH_LENGTH },
        { 8128, MUSLIN_SIZE_MAX + 1, 3, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_STITCH_LENGTH },
        { 8128, 800, -1, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_DECIMALS },
        { 8128, 800, 4, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_DECIMALS },
        { 8128, 800, 3, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_DIRECTION },
        { 8128, 800, 3, 4, MUSLIN_ERR_CHOICE, MUSLIN_ARG_DIRECTION },
    };
    for (size_t i = 0; i < COUNT_OF(wrong); i++) {
        struct muslin_problem problem = PROBLEM;
        int64_t thousandths = 77;
        int32_t exact = 77;
        ck_status(muslin_stitch_count(wrong[i].length, wrong[i].stitch, wrong[i].decimals, wrong[i].direction,
                                      &thousandths, &exact, &problem), wrong[i].status);
        ck_assert_int_eq(problem.argument, wrong[i].argument);
        ck_assert(thousandths == 77 && exact == 77);
    }
    ck_status(muslin_stitch_count(8128, 800, 3, 3, NULL, NULL, NULL), MUSLIN_ERR_NULL);
}
END_TEST

START_TEST(twelve_stitches_to_the_inch_are_two_millimetres_long)
{
    /* Example: 12 stitches in an inch are 677 ticks long, 2.1 mm to tenths. */
    const struct muslin_rounding_spec tick = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounding_spec tenths = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded out = { .size = (uint32_t)sizeof out };
    ck_ok(muslin_stitch_length(WHOLE_IN(1), 12000, &tick, &out, NULL));
    ck_assert_int_eq(out.value, 677);
    ck_assert_int_eq(out.exact, 0);
    tenths.grid = MM(1) / 10;
    ck_ok(muslin_stitch_length(WHOLE_IN(1), 12000, &tenths, &out, NULL));
    ck_assert_int_eq(out.value, 21 * MM(1) / 10);
    ck_ok(muslin_stitch_length(WHOLE_IN(1), 10160, &tick, &out, NULL));
    ck_assert_int_eq(out.value, 800);
    ck_assert_int_eq(out.exact, 1);
    ck_ok(muslin_stitch_length(MUSLIN_SIZE_MAX, 1, &tick, &out, NULL));
    ck_assert_int_eq(out.value, 1000 * MUSLIN_SIZE_MAX);
}
END_TEST

static muslin_status call_stitch(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_stitch_length(WHOLE_IN(1), 12000, spec, out, problem);
}

START_TEST(the_length_of_a_stitch_keeps_the_rules)
{
    const struct muslin_rounding_spec good = MUSLIN_ROUNDING_SPEC_INIT;
    const struct ruled stitch = RULED(call_stitch, good, muslin_rounded);
    const struct {
        muslin_len length;
        int64_t thousandths;
        int32_t argument;
    } wrong[] = {
        { -1, 1000, MUSLIN_ARG_LENGTH },
        { MUSLIN_SIZE_MAX + 1, 1000, MUSLIN_ARG_LENGTH },
        { 8128, 0, MUSLIN_ARG_STITCHES },
        { 8128, MUSLIN_COUNT_MAX + 1, MUSLIN_ARG_STITCHES },
    };
    struct muslin_rounding_spec bad = MUSLIN_ROUNDING_SPEC_INIT;
    bad.grid = 0;
    ck_struct_rules(&stitch);
    ck_no_flag_known(&stitch);
    ck_assert_int_eq(failing(&stitch, &bad, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_GRID);
    for (size_t i = 0; i < COUNT_OF(wrong); i++) {
        struct muslin_problem problem = PROBLEM;
        struct muslin_rounded out = { .size = (uint32_t)sizeof out };
        ck_status(muslin_stitch_length(wrong[i].length, wrong[i].thousandths, &good, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, wrong[i].argument);
        ck_assert_int_eq(out.value, 0);
    }
}
END_TEST

INIT_CALL(piecing)
INIT_CALL(thread)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_piecing_spec piecing_spec = MUSLIN_PIECING_SPEC_INIT;
    const struct muslin_thread_spec thread_spec = MUSLIN_THREAD_SPEC_INIT;
    ck_init_rules(init_piecing, &piecing_spec, (uint32_t)sizeof piecing_spec);
    ck_init_rules(init_thread, &thread_spec, (uint32_t)sizeof thread_spec);
    ck_assert_int_eq(thread_spec.stitch_length, MM(2));
    ck_assert_int_eq(piecing_spec.strip_length, MUSLIN_USABLE_WIDTH_USUAL);
}
END_TEST

Suite *supplies_suite(void);

static void add_thread_tests(Suite *suite)
{
    TCase *tcase = tcase_create("seams, thread, stitches");
    tcase_add_test(tcase, two_tops_from_seven_sets_take_1921_inches_of_seam);
    tcase_add_test(tcase, seams_are_those_one_would_sew_one_by_one);
    tcase_add_test(tcase, piecing_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, seams_too_long_to_count_are_an_overflow);
    tcase_add_test(tcase, a_factor_of_nothing_leaves_nothing_to_overflow);
    tcase_add_test(tcase, a_seam_takes_two_and_a_half_times_its_length);
    tcase_add_test(tcase, the_formula_counts_the_thickness_once_a_stitch_for_each_thread);
    tcase_add_test(tcase, bobbins_and_spools_are_counted_up_and_tell_their_slack);
    tcase_add_test(tcase, ready_bobbins_leave_the_spools_to_the_needle);
    tcase_add_test(tcase, thread_is_rounded_up_once_and_so_is_each_half);
    tcase_add_test(tcase, spools_hold_the_whole_thread_and_not_two_rounded_halves);
    tcase_add_test(tcase, no_seam_takes_no_thread);
    tcase_add_test(tcase, the_longest_seam_is_still_right);
    tcase_add_test(tcase, thread_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, what_breaks_a_range_is_said_in_inches_and_shares);
    tcase_add_test(tcase, thread_too_long_to_count_is_an_overflow);
    tcase_add_test(tcase, a_bobbin_may_be_the_longest_or_a_tick);
    tcase_add_test(tcase, slack_ends_where_the_thread_can_no_longer_be_counted);
    tcase_add_test(tcase, two_and_a_half_millimetres_are_ten_stitches_to_the_inch);
    tcase_add_test(tcase, stitches_refuse_what_cannot_be_counted);
    tcase_add_test(tcase, twelve_stitches_to_the_inch_are_two_millimetres_long);
    tcase_add_test(tcase, the_length_of_a_stitch_keeps_the_rules);
    tcase_add_test(tcase, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, tcase);
}

Suite *supplies_suite(void)
{
    Suite *suite = suite_create("supplies");
    add_thread_tests(suite);
    add_quilting_tests(suite);
    add_weight_tests(suite);
    add_cost_tests(suite);
    return suite;
}
