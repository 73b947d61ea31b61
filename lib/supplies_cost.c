/* supplies_cost.c - what a quilt weighs and what its things cost.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/supplies.h"

#include "supplies_inside.h"

/* ---- weight ----------------------------------------------------------------------------------------------------- */

#define TICKS_PER_METRE INT64_C(320000)

muslin_status muslin_weight_spec_init(struct muslin_weight_spec *spec, uint32_t size)
{
    const struct muslin_weight_spec initial = MUSLIN_WEIGHT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void want_direction(struct msl_check *check, int32_t direction)
{
    msl_want_choice(check, MUSLIN_ARG_DIRECTION, direction, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
}

/* Values that share a name in a problem, told apart by its `at`. */
static void want_density(struct msl_check *check, int64_t at, int64_t density)
{
    check->at = at;
    msl_want_count(check, MUSLIN_ARG_DENSITY, density);
    check->at = 0;
}

static void read_weight(struct msl_check *check, struct muslin_weight_spec *spec,
                        const struct muslin_weight_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->width);
    msl_want_size(check, MUSLIN_ARG_QUILT_LENGTH, spec->length);
    msl_want_size(check, MUSLIN_ARG_LENGTH, spec->binding_length);
    msl_want_size(check, MUSLIN_ARG_BINDING_CUT, spec->binding_cut);
    want_density(check, 0, spec->top_density);
    want_density(check, 1, spec->batting_density);
    want_density(check, 2, spec->backing_density);
    want_density(check, 3, spec->binding_density);
    msl_want_some_size(check, MUSLIN_ARG_MASS, spec->step);
    msl_want_between(check, MUSLIN_ARG_EXTRA_SHARE, spec->seam_share, 0, 10 * MUSLIN_PPM);
    want_direction(check, spec->direction);
}

/* A layer's mass in mg times square ticks to the metre and millionths: at most 2^60 x 2^31 x 2^24. */
static struct msl_wide mass_of(muslin_len width, muslin_len length, int64_t density, int32_t share)
{
    return msl_wide_multiply(width * length, density * (MUSLIN_PPM + share));
}

/* The sum of layers becomes a mass; four layers stay far inside the range. */
static int64_t weighed(const struct muslin_weight_spec *s, struct msl_wide mass)
{
    int64_t found = 0;
    (void)msl_share_out(mass, TICKS_PER_METRE * TICKS_PER_METRE * MUSLIN_PPM, s->step, s->direction, &found, NULL);
    return found;
}

muslin_status muslin_weight_plan(const struct muslin_weight_spec *spec, struct muslin_weight *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_weight_spec s = { 0 };
    read_weight(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_wide top = mass_of(s.width, s.length, s.top_density, s.seam_share);
    struct msl_wide batting = mass_of(s.width, s.length, s.batting_density, 0);
    struct msl_wide backing = mass_of(s.width, s.length, s.backing_density, 0);
    struct msl_wide binding = mass_of(s.binding_length, s.binding_cut, s.binding_density, 0);
    struct muslin_weight weight = { 0 };
    weight.top = weighed(&s, top);
    weight.batting = weighed(&s, batting);
    weight.backing = weighed(&s, backing);
    weight.binding = weighed(&s, binding);
    weight.total = weighed(&s, msl_wide_add(msl_wide_add(top, batting), msl_wide_add(backing, binding)));
    msl_write_struct(out, &weight, (uint32_t)sizeof weight);
    return MUSLIN_OK;
}

/* An ounce is 28349.523125 mg and a square yard 0.83612736 square metres; their quotient, in lowest terms, for a
 * thousandth of an ounce. */
#define DENSITY_ABOVE INT64_C(5669904625)
#define DENSITY_BELOW INT64_C(167225472)
/* Thousandths of an ounce in a milligram: 16000 / 453592.37, in lowest terms. */
#define OUNCES_ABOVE INT64_C(1600000)
#define OUNCES_BELOW INT64_C(45359237)

muslin_status muslin_density_from_ounces(int64_t thousandths, int32_t direction, int64_t *density,
                                         struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_count(&check, MUSLIN_ARG_DENSITY, thousandths);
    want_direction(&check, direction);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, density);
    if (check.status != MUSLIN_OK)
        return check.status;
    return msl_share_out(msl_wide_multiply(thousandths, DENSITY_ABOVE), DENSITY_BELOW, 1, direction, density, NULL);
}

muslin_status muslin_mass_in_ounces(int64_t mass, int32_t decimals, int32_t direction, int64_t *thousandths,
                                    struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_between(&check, MUSLIN_ARG_MASS, mass, 0, MUSLIN_LENGTH_MAX);
    msl_want_between(&check, MUSLIN_ARG_DECIMALS, decimals, 0, 3);
    want_direction(&check, direction);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, thousandths);
    if (check.status != MUSLIN_OK)
        return check.status;
    return msl_share_out(msl_wide_multiply(mass, OUNCES_ABOVE), OUNCES_BELOW, msl_step_of(decimals), direction,
                         thousandths, NULL);
}

/* ---- cost ------------------------------------------------------------------------------------------------------- */

muslin_status muslin_cost_spec_init(struct muslin_cost_spec *spec, uint32_t size)
{
    const struct muslin_cost_spec initial = MUSLIN_COST_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* A spec or a row, as `argument` names it. */
static void read_cost(struct msl_check *check, int32_t argument, struct muslin_cost_spec *spec, const void *from)
{
    msl_read_struct(check, argument, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    int by_length = spec->sold == MUSLIN_COST_LENGTH;
    msl_want_between(check, MUSLIN_ARG_AMOUNT, spec->amount, 0, by_length ? MUSLIN_LENGTH_MAX / 2 : MUSLIN_COUNT_MAX);
    msl_want_between(check, MUSLIN_ARG_PRICE, spec->price, 0, MUSLIN_MONEY_MAX);
    msl_want_between(check, MUSLIN_ARG_PRICE_PER, spec->per, 1, by_length ? MUSLIN_SIZE_MAX : MUSLIN_COUNT_MAX);
    msl_want_choice(check, MUSLIN_ARG_AMOUNT_KIND, spec->sold, MUSLIN_COST_LENGTH, MUSLIN_COST_BUNDLES);
    want_direction(check, spec->direction);
}

/* What a spec already checked costs; after a failure, nothing. */
static struct muslin_cost cost_of(struct msl_check *check, const struct muslin_cost_spec *spec)
{
    struct muslin_cost cost = { 0 };
    int whole = spec->sold == MUSLIN_COST_BUNDLES;
    if (check->status != MUSLIN_OK)
        return cost;
    cost.bought = whole ? msl_divided_up(spec->amount, spec->per) : spec->amount;
    cost.spare = whole ? cost.bought * spec->per - spec->amount : 0;
    if (msl_share_out(msl_wide_multiply(cost.bought, spec->price), whole ? 1 : spec->per, 1, spec->direction,
                      &cost.cost, &cost.exact) != MUSLIN_OK)
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PRICE, spec->price, MUSLIN_MONEY_MAX);
    return cost;
}

muslin_status muslin_cost_plan(const struct muslin_cost_spec *spec, struct muslin_cost *out,
                               struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_cost_spec s = { 0 };
    read_cost(&check, MUSLIN_ARG_SPEC, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    struct muslin_cost cost = cost_of(&check, &s);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &cost, (uint32_t)sizeof cost);
    return check.status;
}

/* Costs are never negative, so whether their sum is too large does not depend on their order. */
muslin_status muslin_cost_total(const struct muslin_cost_spec *rows, size_t row_size, size_t n, int64_t *total,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    int64_t sum = 0;
    if (n > 0) {
        msl_want_pointer(&check, MUSLIN_ARG_ROWS, rows);
        msl_want_row_size(&check, row_size, (uint32_t)sizeof *rows);
    }
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, total);
    for (size_t i = 0; i < n && check.status == MUSLIN_OK; i++) {
        struct muslin_cost_spec row = { 0 };
        read_cost(&check, MUSLIN_ARG_ROWS, &row, msl_row_to_read(&check, rows, row_size, i));
        int64_t cost = cost_of(&check, &row).cost;
        if (cost > MUSLIN_MONEY_MAX - sum)
            msl_fail(&check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PRICE, row.price, MUSLIN_MONEY_MAX - sum);
        else
            sum += cost;
    }
    if (check.status == MUSLIN_OK)
        *total = sum;
    return check.status;
}
