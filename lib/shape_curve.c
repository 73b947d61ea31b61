/* shape_curve.c - quarter circles and the length of arcs.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/shape.h"

#include "surd.h"

/* ---- arcs ------------------------------------------------------------------------------------------------------- */

/* pi = 3 + PI_HIGH / 2^62 + PI_LOW / 2^124 + less than 2^-124. */
#define PI_HIGH INT64_C(0x090FDAA22168C234)
#define PI_LOW INT64_C(0x313198A2E0370734)

/* floor(a / 2^62), a not below 0. */
static int64_t over_2_62(struct msl_wide a)
{
    return a.high * 4 + (int64_t)(a.low >> 62);
}

/* q x pi / 2 ticks: its halves are floor(q x pi). With q up to 2^32 what is left out of pi changes q x pi by less than
 * 2^-92, and for no such q above 0 is q x pi nearer to a whole number than 2^-33: among the best fractions for pi,
 * 6167950454 / 1963319607 is the last with so small a denominator, and it comes nearest, to 2^-32.6. */
static struct msl_exact quarters_exact(int64_t q)
{
    struct msl_exact exact;
    int64_t low = over_2_62(msl_wide_multiply(q, PI_LOW));
    struct msl_wide fraction = msl_wide_add(msl_wide_multiply(q, PI_HIGH), msl_wide_from(low));
    int64_t halves = 3 * q + over_2_62(fraction);
    exact.floor = halves / 2;
    exact.upper_half = halves % 2 != 0;
    exact.on_tick = q == 0;
    return exact;
}

muslin_status muslin_arc_length(muslin_len radius, int32_t quarter_turns, const struct muslin_rounding_spec *rounding,
                                struct muslin_rounded *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec to = { 0 };
    struct muslin_rounded rounded = { 0 };
    msl_want_size(&check, MUSLIN_ARG_RADIUS, radius);
    msl_want_between(&check, MUSLIN_ARG_QUARTER_TURNS, quarter_turns, 1, 4);
    msl_read_rounding(&check, &to, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    (void)msl_grid_round(quarters_exact(radius * quarter_turns), &to, &rounded); /* below 2^33: cannot overflow */
    msl_write_struct(out, &rounded, (uint32_t)sizeof rounded);
    return MUSLIN_OK;
}

/* ---- quarter circles -------------------------------------------------------------------------------------------- */

muslin_status muslin_quarter_circle_spec_init(struct muslin_quarter_circle_spec *spec, uint32_t size)
{
    const struct muslin_quarter_circle_spec initial = MUSLIN_QUARTER_CIRCLE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static muslin_len rounded(struct msl_exact exact, const struct muslin_rounding_spec *to)
{
    struct muslin_rounded result = { 0 };
    (void)msl_grid_round(exact, to, &result); /* sizes are below 2^31: cannot overflow */
    return result.value;
}

static muslin_len halved(int64_t half_ticks, const struct muslin_rounding_spec *to)
{
    struct msl_surd surd = msl_fraction_of(half_ticks, 2);
    return rounded(msl_surd_exact(&surd), to);
}

/* (start +- sqrt(radius^2 - e^2)) / 2: where an arc about the finished corner ends on an edge moved out by e, all in
 * half ticks. */
static muslin_len leg(int64_t start, int32_t sign, int64_t radius, int64_t e, const struct muslin_rounding_spec *to)
{
    struct msl_surd surd = { .whole = start, .sign = sign, .divisor = 2 };
    surd.radicand = msl_wide_add(msl_wide_multiply(radius, radius), msl_wide_multiply(-e, e));
    return rounded(msl_surd_exact(&surd), to);
}

static struct muslin_quarter_circle quarter_of(const struct muslin_quarter_circle_spec *spec,
                                               const struct muslin_rounding_spec *to)
{
    struct muslin_quarter_circle quarter = { 0 };
    int64_t e = 2 * spec->allowance + spec->take_up;
    int64_t convex = 2 * spec->radius + e;
    int64_t concave = 2 * spec->radius - e;
    quarter.convex_cut_square = spec->radius + e;
    quarter.convex_cut_radius = halved(convex, to);
    quarter.convex_cut_leg = leg(e, 1, convex, e, to);
    quarter.concave_cut_square = spec->finished + e;
    quarter.concave_cut_radius = halved(concave, to);
    quarter.concave_cut_leg = leg(2 * spec->finished + e, -1, concave, e, to);
    quarter.centre_inset = halved(e, to);
    quarter.seam_length = rounded(quarters_exact(spec->radius), to);
    return quarter;
}

muslin_status muslin_shape_quarter_circle(const struct muslin_quarter_circle_spec *spec,
                                          const struct muslin_rounding_spec *rounding,
                                          struct muslin_quarter_circle *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quarter_circle_spec in = { 0 };
    struct muslin_rounding_spec to = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, 0, spec);
    msl_want_between(&check, MUSLIN_ARG_FINISHED, in.finished, 2, MUSLIN_SIZE_MAX / 4);
    msl_want_seam(&check, MUSLIN_ARG_SEAM_ALLOWANCE, in.allowance);
    msl_want_seam(&check, MUSLIN_ARG_TAKE_UP, in.take_up);
    if (check.status == MUSLIN_OK)
        msl_want_between(&check, MUSLIN_ARG_RADIUS, in.radius, 1, in.finished - 1);
    msl_read_rounding(&check, &to, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status == MUSLIN_OK && in.radius < 2 * in.allowance + in.take_up)
        msl_fail(&check, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_RADIUS, in.radius, 2 * in.allowance + in.take_up);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_quarter_circle quarter = quarter_of(&in, &to);
    msl_write_struct(out, &quarter, (uint32_t)sizeof quarter);
    return MUSLIN_OK;
}
