/* supplies.c - seams to be sewn, the thread for them, and stitches.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/supplies.h"

#include "supplies_inside.h"

muslin_status msl_share_out(struct msl_wide numerator, int64_t denominator, int64_t step, int32_t direction,
                            int64_t *out, int32_t *exact)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { 0 };
    rounding.grid = step;
    rounding.direction = direction;
    muslin_status status = msl_wide_round(numerator, denominator, &rounding, &rounded);
    if (status != MUSLIN_OK)
        return status;
    *out = rounded.value;
    if (exact != NULL)
        *exact = rounded.exact;
    return MUSLIN_OK;
}

int64_t msl_step_of(int32_t decimals)
{
    static const int16_t steps[] = { 1000, 100, 10, 1 };
    return steps[decimals];
}

/* ---- seams to be sewn ------------------------------------------------------------------------------------------- */

muslin_status muslin_piecing_spec_init(struct muslin_piecing_spec *spec, uint32_t size)
{
    const struct muslin_piecing_spec initial = MUSLIN_PIECING_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_piecing(struct msl_check *check, struct muslin_piecing_spec *spec,
                         const struct muslin_piecing_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_count(check, MUSLIN_ARG_SETS, spec->sets);
    msl_want_some_count(check, MUSLIN_ARG_STRIPS_PER_SET, spec->strips_per_set);
    msl_want_size(check, MUSLIN_ARG_STRIP_LENGTH, spec->strip_length);
    msl_want_count(check, MUSLIN_ARG_TOPS, spec->tops);
    msl_want_some_count(check, MUSLIN_ARG_COLUMNS, spec->columns);
    msl_want_some_count(check, MUSLIN_ARG_QUILT_ROWS, spec->rows);
    msl_want_some_count(check, MUSLIN_ARG_SEGMENTS_PER_BLOCK, spec->segments_per_block);
    msl_want_size(check, MUSLIN_ARG_BLOCK_WIDTH, spec->block_width);
    msl_want_size(check, MUSLIN_ARG_BLOCK_HEIGHT, spec->block_height);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
}

/* a x b of what is not negative, or MUSLIN_ERR_OVERFLOW and 0. */
static int64_t product(struct msl_check *check, int64_t a, int64_t b)
{
    if (b == 0 || a <= MUSLIN_LENGTH_MAX / b)
        return a * b;
    msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_SEAMS, a, MUSLIN_LENGTH_MAX / b);
    return 0;
}

/* a + b of what is not negative, or MUSLIN_ERR_OVERFLOW and 0. */
static int64_t sum(struct msl_check *check, int64_t a, int64_t b)
{
    if (a <= MUSLIN_LENGTH_MAX - b)
        return a + b;
    msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_SEAMS, a, MUSLIN_LENGTH_MAX - b);
    return 0;
}

/* So many seams a piece, of one length each, in so many pieces. A factor of 0 leaves nothing to overflow. */
static muslin_len sew(struct msl_check *check, struct muslin_piecing *piecing, int64_t pieces, int64_t seams,
                      muslin_len length)
{
    int64_t all = product(check, pieces, seams);
    piecing->seams = sum(check, piecing->seams, all);
    muslin_len sewn = product(check, all, length);
    piecing->total = sum(check, piecing->total, sewn);
    return sewn;
}

/* Counts are below 2^31 and sizes at most 2^30, so a product of two of them fits; sew() looks after the third. */
muslin_status muslin_piecing_plan(const struct muslin_piecing_spec *spec, struct muslin_piecing *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_piecing_spec s = { 0 };
    read_piecing(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_piecing piecing = { 0 };
    muslin_len seam = 2 * s.allowance + s.take_up;
    muslin_len height = s.block_height + seam;
    muslin_len width = s.columns * s.block_width + seam;
    int64_t rows = s.tops * s.rows;
    piecing.in_sets = sew(&check, &piecing, s.sets, s.strips_per_set - 1, s.strip_length);
    int64_t blocks = s.segments_per_block > 1 ? product(&check, rows, s.columns) : 0;
    piecing.in_blocks = sew(&check, &piecing, blocks, s.segments_per_block - 1, height);
    piecing.in_rows = sew(&check, &piecing, rows, s.columns - 1, height);
    piecing.between_rows = sew(&check, &piecing, s.tops, s.rows - 1, width);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &piecing, (uint32_t)sizeof piecing);
    return check.status;
}

/* ---- thread ----------------------------------------------------------------------------------------------------- */

#define SEAM_LENGTH_MAX (MUSLIN_LENGTH_MAX / 2)

muslin_status muslin_thread_spec_init(struct muslin_thread_spec *spec, uint32_t size)
{
    const struct muslin_thread_spec initial = MUSLIN_THREAD_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_thread(struct msl_check *check, struct muslin_thread_spec *spec,
                        const struct muslin_thread_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_THREAD_READY_BOBBINS, from);
    msl_want_between(check, MUSLIN_ARG_LENGTH, spec->seam, 0, SEAM_LENGTH_MAX);
    msl_want_some_count(check, MUSLIN_ARG_RATIO, spec->ratio_above);
    msl_want_some_count(check, MUSLIN_ARG_RATIO, spec->ratio_below);
    msl_want_size(check, MUSLIN_ARG_THICKNESS, spec->thickness);
    msl_want_some_size(check, MUSLIN_ARG_STITCH_LENGTH, spec->stitch_length);
    msl_want_between(check, MUSLIN_ARG_BOBBIN, spec->bobbin, 0, SEAM_LENGTH_MAX);
    msl_want_between(check, MUSLIN_ARG_SPOOL, spec->spool, 0, SEAM_LENGTH_MAX);
    msl_want_choice(check, MUSLIN_ARG_METHOD, spec->method, MUSLIN_THREAD_METHOD_RATIO, MUSLIN_THREAD_METHOD_FORMULA);
    msl_want_between(check, MUSLIN_ARG_WASTE, spec->waste, 0, 10 * MUSLIN_PPM);
}

/* Thread for so much seam; above is at most 2^32, below less than 2^31. */
struct ratio {
    int64_t above;
    int64_t below;
};

/* 2 + 2 T S with S = 1 / stitch is 2 (stitch + T) : stitch. */
static struct ratio ratio_of(const struct muslin_thread_spec *spec)
{
    struct ratio ratio = { spec->ratio_above, spec->ratio_below };
    if (spec->method == MUSLIN_THREAD_METHOD_FORMULA) {
        ratio.above = 2 * (spec->stitch_length + spec->thickness);
        ratio.below = spec->stitch_length;
    }
    return ratio;
}

/* The same with waste: above is below 2^56, below less than 2^51. */
static struct ratio with_waste(struct ratio ratio, int32_t waste)
{
    ratio.above *= MUSLIN_PPM + waste;
    ratio.below *= MUSLIN_PPM;
    return ratio;
}

/* How much longer the seam may be while its thread is no longer than `reach`, nor longer than can be counted: the
 * longest seam with seam x above / below <= reach. */
static muslin_len longer_by(muslin_len seam, struct ratio ratio, muslin_len reach)
{
    muslin_len longest = SEAM_LENGTH_MAX; /* where it is more than can be counted */
    int64_t rest;
    (void)msl_wide_floor(msl_wide_multiply(msl_lesser(reach, MUSLIN_LENGTH_MAX), ratio.below), ratio.above, &longest,
                         &rest);
    return msl_lesser(longest, SEAM_LENGTH_MAX) - seam;
}

/* The thread of which a half is `half`, a whole number of ticks; as much as can be counted where it is more. */
static muslin_len twice(muslin_len half)
{
    return half > MUSLIN_LENGTH_MAX / 2 ? MUSLIN_LENGTH_MAX : 2 * half;
}

/* Bobbins and spools that are counted at all. What they hold is below 2^63: thread of up to 2^62 and one holder's,
 * which is below 2^61. Without ready bobbins the spools give both halves, which are rounded up together. */
static void count_holders(const struct muslin_thread_spec *s, struct ratio ratio, struct muslin_thread *thread)
{
    int ready = (s->flags & MUSLIN_THREAD_READY_BOBBINS) != 0;
    if (s->bobbin > 0) {
        thread->bobbins = msl_divided_up(thread->bobbin_thread, s->bobbin);
        thread->left_on_bobbin = thread->bobbins * s->bobbin - thread->bobbin_thread;
        thread->bobbin_longer_by = longer_by(s->seam, ratio, twice(thread->bobbins * s->bobbin));
    }
    if (s->spool > 0) {
        muslin_len needed = ready ? thread->needle : thread->with_waste;
        thread->spools = msl_divided_up(needed, s->spool);
        muslin_len held = thread->spools * s->spool;
        thread->left_on_spool = held - needed;
        thread->spool_longer_by = longer_by(s->seam, ratio, ready ? twice(held) : held);
    }
}

muslin_status muslin_thread_plan(const struct muslin_thread_spec *spec, struct muslin_thread *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_thread_spec s = { 0 };
    struct muslin_thread thread = { 0 };
    read_thread(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct ratio bare = ratio_of(&s);
    struct ratio ratio = with_waste(bare, s.waste);
    if (msl_share_out(msl_wide_multiply(s.seam, ratio.above), ratio.below, 1, MUSLIN_DIRECTION_UP, &thread.with_waste,
                      NULL) != MUSLIN_OK)
        return msl_fail(&check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_LENGTH, s.seam, 0);
    (void)msl_share_out(msl_wide_multiply(s.seam, bare.above), bare.below, 1, MUSLIN_DIRECTION_UP, &thread.thread,
                        NULL);
    (void)msl_share_out(msl_wide_multiply(1000, bare.above), bare.below, 1, MUSLIN_DIRECTION_NEAREST,
                        &thread.ratio_thousandths, NULL);
    thread.needle = msl_divided_up(thread.with_waste, 2);
    thread.bobbin_thread = thread.needle;
    count_holders(&s, ratio, &thread);
    msl_write_struct(out, &thread, (uint32_t)sizeof thread);
    return MUSLIN_OK;
}

/* ---- stitches --------------------------------------------------------------------------------------------------- */

muslin_status muslin_stitch_count(muslin_len length, muslin_len stitch_length, int32_t decimals, int32_t direction,
                                  int64_t *thousandths, int32_t *exact, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_size(&check, MUSLIN_ARG_LENGTH, length);
    msl_want_some_size(&check, MUSLIN_ARG_STITCH_LENGTH, stitch_length);
    msl_want_between(&check, MUSLIN_ARG_DECIMALS, decimals, 0, 3);
    msl_want_choice(&check, MUSLIN_ARG_DIRECTION, direction, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, thousandths);
    if (check.status != MUSLIN_OK)
        return check.status;
    return msl_share_out(msl_wide_multiply(length, 1000), stitch_length, msl_step_of(decimals), direction, thousandths,
                         exact);
}

muslin_status muslin_stitch_length(muslin_len length, int64_t thousandths, const struct muslin_rounding_spec *rounding,
                                   struct muslin_rounded *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec r = { 0 };
    msl_want_size(&check, MUSLIN_ARG_LENGTH, length);
    msl_want_some_count(&check, MUSLIN_ARG_STITCHES, thousandths);
    msl_read_rounding(&check, &r, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_rounded rounded = { 0 };
    (void)msl_wide_round(msl_wide_multiply(length, 1000), thousandths, &r, &rounded); /* at most 2^40 + 2^30 */
    msl_write_struct(out, &rounded, (uint32_t)sizeof rounded);
    return MUSLIN_OK;
}
