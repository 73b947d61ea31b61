/* finishing_bias.c - bias strip from a continuous tube or from separate strips, by exact geometry.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every length here is sqrt 2 x m - k with whole numbers m and k of ticks, so it is rounded down in one step:
 * floor(sqrt 2 x m) - k, and floor(sqrt 2 x m) is the whole root of 2 m m. */
#include "finishing_inside.h"
#include "root.h"
#include "wide.h"

static const struct muslin_bias_spec bias_start = MUSLIN_BIAS_SPEC_INIT;

muslin_status muslin_bias_spec_init(struct muslin_bias_spec *spec, uint32_t size)
{
    return msl_init_struct(spec, size, &bias_start, (uint32_t)sizeof bias_start, (uint32_t)sizeof bias_start);
}

/* sqrt 2 x m down to a tick; m up to 2^31. */
static muslin_len root2_times_down(muslin_len m)
{
    return (muslin_len)msl_root(2 * (uint64_t)m * (uint64_t)m, NULL);
}

/* How many strips of width w lie side by side in `straight`, measured on the straight grain, where each takes
 * sqrt 2 w: the greatest n with n sqrt 2 w <= straight, that is n n <= straight^2 / (2 w w). As n n is whole, the
 * quotient may be rounded down first. */
static int64_t strips_within(muslin_len straight, muslin_len w)
{
    uint64_t d = (uint64_t)straight;
    return (int64_t)msl_root(d * d / (2 * (uint64_t)w * (uint64_t)w), NULL);
}

static muslin_len blunt_loss(const struct muslin_bias_spec *spec)
{
    return (spec->flags & MUSLIN_BIAS_BLUNT_ENDS) != 0 ? spec->strip_cut : 0;
}

/* A run of sqrt 2 m - lost ticks; below zero nothing is left. */
static muslin_len run_length(muslin_len m, muslin_len lost)
{
    return msl_greater(root2_times_down(msl_greater(m, 0)) - lost, 0);
}

/* ---- the tube -------------------------------------------------------------------------------------------------- */

struct bias_cloth {
    muslin_len shorter;
    muslin_len longer;
};

static struct bias_cloth cloth_of(muslin_len width, muslin_len length)
{
    const struct bias_cloth cloth = { msl_lesser(width, length), msl_greater(width, length) };
    return cloth;
}

/* No round when the tube's two seams take up all of a side. */
static int64_t tube_rounds(struct bias_cloth cloth, const struct muslin_bias_spec *spec)
{
    if (cloth.shorter <= 2 * spec->allowance)
        return 0;
    return strips_within(cloth.longer - 2 * spec->allowance, spec->strip_cut);
}

/* m of the tube's length: n a - (n - 1) 2 s, for n rounds of 1 or more. It is between a and n a, because a > 2 s. */
static muslin_len tube_m(int64_t rounds, muslin_len shorter, muslin_len allowance)
{
    return rounds * shorter - (rounds - 1) * 2 * allowance;
}

/* Fills rounds, joins and length. */
static void sew_tube(struct msl_check *check, struct bias_cloth cloth, const struct muslin_bias_spec *spec,
                     struct muslin_bias *bias)
{
    int64_t rounds = tube_rounds(cloth, spec);
    if (rounds == 0)
        return;
    msl_want_between(check, MUSLIN_ARG_BIAS_LENGTH, rounds * cloth.shorter, 0, MUSLIN_SIZE_MAX);
    if (check->status != MUSLIN_OK)
        return;
    bias->rounds = rounds;
    bias->joins = rounds - 1;
    bias->length = run_length(tube_m(rounds, cloth.shorter, spec->allowance), blunt_loss(spec));
}

static void want_strip(struct msl_check *check, const struct muslin_bias_spec *spec)
{
    msl_want_some_size(check, MUSLIN_ARG_STRIP_CUT, spec->strip_cut);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
}

muslin_status muslin_bias_tube(const struct muslin_bias_spec *spec, struct muslin_bias *out,
                               struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_bias_spec asked = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &asked, (uint32_t)sizeof asked, (uint32_t)sizeof asked,
                    MUSLIN_BIAS_BLUNT_ENDS, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_some_size(&check, MUSLIN_ARG_FABRIC_WIDTH, asked.width);
    msl_want_some_size(&check, MUSLIN_ARG_CLOTH_LENGTH, asked.length);
    want_strip(&check, &asked);
    if (check.status != MUSLIN_OK)
        return check.status;

    struct muslin_bias bias = { 0 };
    sew_tube(&check, cloth_of(asked.width, asked.length), &asked, &bias);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &bias, (uint32_t)sizeof bias);
    return MUSLIN_OK;
}

/* ---- the least square ------------------------------------------------------------------------------------------ */

/* sqrt 2 m >= needed, where needed is at most 2^31: no m above that needs a closer look, so its square fits. */
static int reaches(muslin_len m, muslin_len needed)
{
    const uint64_t looked_at = (uint64_t)msl_lesser(m, 2 * MUSLIN_SIZE_MAX);
    return 2 * looked_at * looked_at >= (uint64_t)needed * (uint64_t)needed;
}

static int square_suffices(muslin_len side, const struct muslin_bias_spec *spec)
{
    struct bias_cloth square = { side, side };
    int64_t rounds = tube_rounds(square, spec);
    return rounds > 0 && reaches(tube_m(rounds, side, spec->allowance), spec->wanted + blunt_loss(spec));
}

/* The least k in 1 .. most with k x grid long enough, or most + 1. Halving is right because the tube's length never
 * falls as the square grows: with the rounds n unchanged it grows by n sqrt 2 for each tick of the side, and one round
 * more adds sqrt 2 (side - 2 s), which is above 0 wherever there is a round at all. */
static int64_t least_steps(muslin_len grid, int64_t most, const struct muslin_bias_spec *spec)
{
    int64_t least = 1;
    int64_t end = most + 1;
    while (least < end) {
        int64_t middle = least + (end - least) / 2;
        if (square_suffices(middle * grid, spec))
            end = middle;
        else
            least = middle + 1;
    }
    return least;
}

/* The published rule: a square as large as the strip wanted. */
static muslin_len area_rule(muslin_len wanted, muslin_len strip_cut)
{
    const struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded side = { 0 };
    msl_root_round((uint64_t)wanted * (uint64_t)strip_cut, 1, &nearest, &side);
    return side.value;
}

static void want_rounding_up(struct msl_check *check, struct muslin_rounding_spec *into,
                             const struct muslin_rounding_spec *from)
{
    msl_read_rounding(check, into, from);
    msl_want_choice(check, MUSLIN_ARG_DIRECTION, into->direction, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_UP);
    msl_want_between(check, MUSLIN_ARG_TOLERANCE, into->tolerance, 0, 0);
}

static void find_square(struct msl_check *check, muslin_len grid, const struct muslin_bias_spec *spec,
                        struct muslin_bias *bias)
{
    const int64_t most = MUSLIN_SIZE_MAX / grid;
    int64_t steps = least_steps(grid, most, spec);
    if (steps > most) {
        struct bias_cloth largest = { most * grid, most * grid };
        sew_tube(check, largest, spec, bias);
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_BIAS_LENGTH, spec->wanted, bias->length);
        return;
    }
    struct bias_cloth square = { steps * grid, steps * grid };
    sew_tube(check, square, spec, bias);
    bias->square_cut = square.shorter;
    bias->area_rule = area_rule(spec->wanted, spec->strip_cut);
    bias->spare = bias->length - spec->wanted;
}

muslin_status muslin_bias_least_square(const struct muslin_bias_spec *spec, const struct muslin_rounding_spec *rounding,
                                       struct muslin_bias *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_bias_spec asked = { 0 };
    struct muslin_rounding_spec up = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &asked, (uint32_t)sizeof asked, (uint32_t)sizeof asked,
                    MUSLIN_BIAS_BLUNT_ENDS, spec);
    want_rounding_up(&check, &up, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    want_strip(&check, &asked);
    msl_want_some_size(&check, MUSLIN_ARG_BIAS_LENGTH, asked.wanted);
    if (check.status != MUSLIN_OK)
        return check.status;

    struct muslin_bias bias = { 0 };
    find_square(&check, up.grid, &asked, &bias);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &bias, (uint32_t)sizeof bias);
    return MUSLIN_OK;
}

/* ---- separate strips ------------------------------------------------------------------------------------------- */

/* Both halves together: 2 n strips and 2 n - 1 joins give sqrt 2 (2 n S - (2 n - 1) 2 s) - 2 n n w. With n S within
 * MUSLIN_SIZE_MAX the bracket stays within 2^31, and n n w within it too, because n w is at most S / sqrt 2. */
static void cut_strips(struct msl_check *check, const struct muslin_bias_spec *spec, struct muslin_bias *bias)
{
    const muslin_len side = spec->width;
    const muslin_len w = spec->strip_cut;
    int64_t half = strips_within(side, w);
    if (half == 0)
        return;
    msl_want_between(check, MUSLIN_ARG_BIAS_LENGTH, half * side, 0, MUSLIN_SIZE_MAX);
    if (check->status != MUSLIN_OK)
        return;
    bias->rounds = 2 * half;
    bias->joins = 2 * half - 1;
    bias->length = run_length(2 * half * side - bias->joins * 2 * spec->allowance,
                              2 * half * half * w + blunt_loss(spec));
}

muslin_status muslin_bias_strips(const struct muslin_bias_spec *spec, struct muslin_bias *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_bias_spec asked = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &asked, (uint32_t)sizeof asked, (uint32_t)sizeof asked,
                    MUSLIN_BIAS_BLUNT_ENDS, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_some_size(&check, MUSLIN_ARG_FABRIC_WIDTH, asked.width);
    if (asked.length != 0)
        msl_want_between(&check, MUSLIN_ARG_CLOTH_LENGTH, asked.length, asked.width, asked.width);
    want_strip(&check, &asked);
    if (check.status != MUSLIN_OK)
        return check.status;

    struct muslin_bias bias = { 0 };
    cut_strips(&check, &asked, &bias);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &bias, (uint32_t)sizeof bias);
    return MUSLIN_OK;
}
