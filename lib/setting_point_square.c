/* setting_point_square.c - the squares of a setting on point, exactly and as the trade makes them.
 *
 * SPDX-License-Identifier: MIT
 *
 * A triangle's allowances run parallel to its three sides, t / 2 outside each. Around a right triangle with two equal
 * legs that makes the long side longer by t + t sqrt 2 and each leg by t + t / sqrt 2. A square cut twice has the long
 * side for its own side, a square cut once a leg; set-off lengthens both by 2 f. With d = 1 for a square cut twice and
 * d = 2 for one cut once, both needs are ((side + t) sqrt 2 + d (2 f + t)) / d.
 *
 * Sizes are at most 2^30 and t below 2^29, a factor's parts at most 10^6 < 2^20: the whole numbers below stay under
 * 2^55. */
#include "setting_point.h"

#include "surd.h"

muslin_len msl_point_seam(const struct muslin_setting_point_spec *spec)
{
    return 2 * spec->allowance + spec->take_up;
}

/* `times` the exact need, a value (whole + sqrt n) / d. */
static struct msl_surd need_times(int64_t times, const struct muslin_setting_point_spec *spec,
                                  const struct msl_point_square *square)
{
    muslin_len seam = msl_point_seam(spec);
    return msl_surd_of(times * square->divisor * (2 * spec->set_off + seam), times * (square->side + seam), 2,
                       square->divisor);
}

/* ---- the customary total ----------------------------------------------------------------------------------------- */

/* The square's diagonal by the customary factor, or by the root, rounded; half of it, up, for a square cut once. */
static muslin_len rounded_diagonal(const struct muslin_setting_point_spec *spec,
                                   const struct muslin_rounding_spec *cutting, const struct msl_point_square *square)
{
    struct muslin_rounded rounded = { 0 };
    struct msl_surd diagonal = msl_surd_of(0, square->side, 2, 1);
    if (spec->factor_numerator != 0)
        diagonal = msl_fraction_of(square->side * spec->factor_numerator, spec->factor_denominator);
    msl_surd_round(&diagonal, cutting, &rounded); /* far below the largest length */
    return (rounded.value + square->divisor - 1) / square->divisor;
}

/* Before trimming room. With a factor the total is a fraction, and what stands below it is the divisor. */
static struct msl_surd total_of(const struct muslin_setting_point_spec *spec,
                                const struct muslin_rounding_spec *cutting, const struct msl_point_square *square)
{
    muslin_len added = 2 * spec->set_off + square->add;
    int64_t above = spec->factor_numerator;
    int64_t below = spec->factor_denominator;
    if ((spec->flags & MUSLIN_SETTING_POINT_DIAGONAL_FIRST) != 0)
        return msl_fraction_of(rounded_diagonal(spec, cutting, square) + added, 1);
    if (above == 0)
        return msl_surd_of(square->divisor * added, square->side, 2, square->divisor);
    if (square->divisor == 1)
        return msl_fraction_of(square->side * above + below * added, below);
    return msl_fraction_of(square->side * below + above * added, above);
}

/* Where both diagonals are the root, the additions are compared; else a fraction and the need, times its divisor. */
static int is_too_small(const struct msl_surd *total, const struct muslin_setting_point_spec *spec,
                        const struct msl_point_square *square)
{
    muslin_len seam = msl_point_seam(spec);
    struct msl_surd needed = msl_surd_of(square->divisor * seam, seam, 2, square->divisor);
    if (total->sign != 0)
        return msl_surd_ceiling(&needed) > square->add;
    needed = need_times(total->divisor, spec, square);
    return msl_surd_ceiling(&needed) > total->whole;
}

static muslin_len rounded_total(const struct muslin_setting_point_spec *spec,
                                const struct muslin_rounding_spec *cutting, struct msl_surd total)
{
    struct muslin_rounded rounded = { 0 };
    total.whole += total.divisor * spec->trim_room;
    if ((spec->flags & MUSLIN_SETTING_POINT_DIAGONAL_FIRST) != 0)
        return total.whole;
    msl_surd_round(&total, cutting, &rounded); /* far below the largest length */
    return rounded.value;
}

/* ---- the square -------------------------------------------------------------------------------------------------- */

struct msl_point_cut msl_point_cut_square(struct msl_check *check, const struct muslin_setting_point_spec *spec,
                                          const struct muslin_rounding_spec *cutting,
                                          const struct msl_point_square *square)
{
    struct msl_point_cut cut = { 0 };
    struct muslin_rounded rounded = { 0 };
    struct msl_surd need = need_times(1, spec, square);
    cut.need = msl_surd_ceiling(&need);
    if (spec->policy == MUSLIN_ALLOWANCE_POLICY_EXACT) {
        msl_surd_round(&need, cutting, &rounded); /* far below the largest length */
        cut.cut = rounded.value;
    } else {
        struct msl_surd total = total_of(spec, cutting, square);
        if (is_too_small(&total, spec, square)) {
            check->at = square->at;
            msl_fail(check, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT, msl_surd_floor(&total), cut.need);
        }
        cut.cut = rounded_total(spec, cutting, total);
    }
    cut.surplus = cut.cut - cut.need;
    return cut;
}
