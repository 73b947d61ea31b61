/* test_supplies_cost.c - weight and cost: sums worked out by hand, the edges of the ranges.
 *
 * SPDX-License-Identifier: MIT */
#include "test_supplies.h"

/* ---- weight ----------------------------------------------------------------------------------------------------- */

enum { GRAM = 1000, METRE = 320000 };

static struct muslin_weight weigh(const struct muslin_weight_spec *spec)
{
    struct muslin_weight out = { .size = (uint32_t)sizeof out };
    ck_ok(muslin_weight_plan(spec, &out, NULL));
    return out;
}

START_TEST(a_quilt_weighs_what_its_layers_weigh)
{
    /* Example: 1.5 x 2 m, top and backing of 120 g, batting of 150 g a square metre, 10 % in seams: 396 + 450 + 360 =
     * 1206 g. */
    struct muslin_weight_spec spec = MUSLIN_WEIGHT_SPEC_INIT;
    spec.width = METRE * 3 / 2;
    spec.length = METRE * 2;
    spec.top_density = 120 * GRAM;
    spec.backing_density = 120 * GRAM;
    spec.batting_density = 150 * GRAM;
    spec.seam_share = MUSLIN_PPM / 10;
    struct muslin_weight out = weigh(&spec);
    ck_assert_int_eq(out.top, 396 * GRAM);
    ck_assert_int_eq(out.batting, 450 * GRAM);
    ck_assert_int_eq(out.backing, 360 * GRAM);
    ck_assert_int_eq(out.binding, 0);
    ck_assert_int_eq(out.total, 1206 * GRAM);
    /* 7 m of binding cut 6 cm wide: 0.42 square metres, 50.4 g, to grams 50; the total is 1256.4, to grams 1256 */
    spec.binding_length = 7 * METRE;
    spec.binding_cut = METRE * 6 / 100;
    spec.binding_density = 120 * GRAM;
    out = weigh(&spec);
    ck_assert_int_eq(out.binding, 50 * GRAM);
    ck_assert_int_eq(out.total, 1256 * GRAM);
    spec.direction = MUSLIN_DIRECTION_UP;
    ck_assert_int_eq(weigh(&spec).binding, 51 * GRAM);
    spec.direction = MUSLIN_DIRECTION_DOWN;
    ck_assert_int_eq(weigh(&spec).binding, 50 * GRAM);
    spec.step = 1;
    ck_assert_int_eq(weigh(&spec).binding, 50400);
    /* 10 x 10 m of 1 t a square metre: no layer but the top has more than its area */
    spec.width = spec.length = spec.binding_length = spec.binding_cut = 10 * METRE;
    spec.top_density = spec.batting_density = spec.backing_density = spec.binding_density = 1000000 * GRAM;
    out = weigh(&spec);
    ck_assert_int_eq(out.top, INT64_C(110000000) * GRAM);
    ck_assert_int_eq(out.batting, INT64_C(100000000) * GRAM);
    ck_assert_int_eq(out.backing, INT64_C(100000000) * GRAM);
    ck_assert_int_eq(out.binding, INT64_C(100000000) * GRAM);
}
END_TEST

/* Layers of half a milligram each: 1 mg, 1 mg, 1 mg; together 1.5 mg, which is 2 mg and not 3. */
START_TEST(the_total_is_rounded_once)
{
    struct muslin_weight_spec spec = MUSLIN_WEIGHT_SPEC_INIT;
    spec.width = METRE;
    spec.length = METRE / 2;
    spec.top_density = 1;
    spec.batting_density = 1;
    spec.backing_density = 1;
    spec.step = 1;
    struct muslin_weight out = weigh(&spec);
    ck_assert_int_eq(out.top, 1);
    ck_assert_int_eq(out.batting, 1);
    ck_assert_int_eq(out.backing, 1);
    ck_assert_int_eq(out.total, 2);
    spec.length--;
    ck_assert_int_eq(weigh(&spec).top, 0);
    ck_assert_int_eq(weigh(&spec).total, 1);
}
END_TEST

START_TEST(the_heaviest_quilt_is_still_right)
{
    struct muslin_weight_spec spec = MUSLIN_WEIGHT_SPEC_INIT;
    spec.width = MUSLIN_SIZE_MAX;
    spec.length = MUSLIN_SIZE_MAX;
    spec.top_density = MUSLIN_COUNT_MAX;
    spec.seam_share = 10 * MUSLIN_PPM;
    spec.step = 1;
    spec.direction = MUSLIN_DIRECTION_DOWN;
    /* 11 x (2^31 - 1) x 2^60 / (1024 x 10^8) = 11 x (2^31 - 1) x 2^42 / 5^8, down */
    ck_assert_int_eq(weigh(&spec).top, INT64_C(265963680191369428));
    ck_assert_int_eq(weigh(&spec).total, INT64_C(265963680191369428));
}
END_TEST

static muslin_status call_weight(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_weight_plan(spec, out, problem);
}
static const struct muslin_weight_spec good_weight = {
    (uint32_t)sizeof good_weight, 0, 480000, 640000, 2240000, 19200, 120000, 150000, 120000, 120000, 1000, 100000,
    MUSLIN_DIRECTION_NEAREST
};
static const struct ruled weight = RULED(call_weight, good_weight, muslin_weight);

START_TEST(weight_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_weight_spec, width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_weight_spec, length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_weight_spec, binding_length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_LENGTH),
        OUTSIDE(muslin_weight_spec, binding_cut, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BINDING_CUT),
        OUTSIDE(muslin_weight_spec, top_density, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_DENSITY),
        OUTSIDE(muslin_weight_spec, batting_density, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_DENSITY),
        OUTSIDE(muslin_weight_spec, backing_density, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_DENSITY),
        OUTSIDE(muslin_weight_spec, binding_density, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_DENSITY),
        OUTSIDE(muslin_weight_spec, step, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_MASS),
        BEYOND(muslin_weight_spec, seam_share, -1, 0, MUSLIN_ARG_EXTRA_SHARE),
        BEYOND(muslin_weight_spec, seam_share, 10 * MUSLIN_PPM + 1, 10 * MUSLIN_PPM, MUSLIN_ARG_EXTRA_SHARE),
        NOT_A_CHOICE(muslin_weight_spec, direction, 3, MUSLIN_ARG_DIRECTION),
    };
    ck_struct_rules(&weight);
    ck_no_flag_known(&weight);
    ck_refusals(&weight, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(a_density_is_named_by_its_place)
{
    int64_t *densities[4];
    struct muslin_weight_spec spec = good_weight;
    densities[0] = &spec.top_density;
    densities[1] = &spec.batting_density;
    densities[2] = &spec.backing_density;
    densities[3] = &spec.binding_density;
    for (int64_t i = 0; i < 4; i++) {
        struct muslin_weight out = { .size = (uint32_t)sizeof out };
        struct muslin_problem problem = PROBLEM;
        int64_t kept = *densities[i];
        *densities[i] = -1;
        ck_status(muslin_weight_plan(&spec, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.at, i);
        *densities[i] = kept;
    }
}
END_TEST

/* NIST Handbook 44: a pound is 453.59237 g, a yard 0.9144 m. An ounce is 28.349523125 g, a square yard 0.83612736
 * square metres: 33.9057 g for an ounce to the square yard. */
START_TEST(ounces_to_the_square_yard_become_metric)
{
    /* Example: 4 oz a square yard are 135623 mg a square metre, nearest. */
    int64_t density = 0;
    ck_ok(muslin_density_from_ounces(4000, MUSLIN_DIRECTION_NEAREST, &density, NULL));
    ck_assert_int_eq(density, 135623); /* 4 x 33905.7475 = 135622.99 */
    ck_ok(muslin_density_from_ounces(4000, MUSLIN_DIRECTION_DOWN, &density, NULL));
    ck_assert_int_eq(density, 135622);
    ck_ok(muslin_density_from_ounces(0, MUSLIN_DIRECTION_UP, &density, NULL));
    ck_assert_int_eq(density, 0);
    /* 0.83612736 x 200000 oz are 167225472 thousandths, and 200000 x 28349.523125 mg are whole */
    ck_ok(muslin_density_from_ounces(167225472, MUSLIN_DIRECTION_UP, &density, NULL));
    ck_assert_int_eq(density, INT64_C(5669904625));
}
END_TEST

START_TEST(a_mass_becomes_ounces)
{
    /* Example: 1206 g with one decimal, nearest, are 42500 thousandths, 42.5 oz. */
    int64_t thousandths = 0;
    ck_ok(muslin_mass_in_ounces(1206 * GRAM, 1, MUSLIN_DIRECTION_NEAREST, &thousandths, NULL));
    ck_assert_int_eq(thousandths, 42500); /* 42.5404 */
    ck_ok(muslin_mass_in_ounces(1206 * GRAM, 3, MUSLIN_DIRECTION_NEAREST, &thousandths, NULL));
    ck_assert_int_eq(thousandths, 42540);
    ck_ok(muslin_mass_in_ounces(1206 * GRAM, 0, MUSLIN_DIRECTION_NEAREST, &thousandths, NULL));
    ck_assert_int_eq(thousandths, 43000);
    ck_ok(muslin_mass_in_ounces(0, 3, MUSLIN_DIRECTION_UP, &thousandths, NULL));
    ck_assert_int_eq(thousandths, 0);
    ck_ok(muslin_mass_in_ounces(1206 * GRAM, 3, MUSLIN_DIRECTION_UP, &thousandths, NULL));
    ck_assert_int_eq(thousandths, 42541);
    /* 100 pounds are 45359237 mg, 1600 oz */
    ck_ok(muslin_mass_in_ounces(45359237, 3, MUSLIN_DIRECTION_UP, &thousandths, NULL));
    ck_assert_int_eq(thousandths, 1600 * 1000);
    ck_ok(muslin_mass_in_ounces(MUSLIN_LENGTH_MAX, 3, MUSLIN_DIRECTION_DOWN, &thousandths, NULL));
    ck_assert_int_eq(thousandths, INT64_C(162672437137419675)); /* (2^62 - 1) x 1600000 / 45359237 */
}
END_TEST

/* Both conversions: one number, a direction, an output. */
typedef muslin_status conversion(int64_t from, int32_t direction, int64_t *to, struct muslin_problem *problem);

static void ck_converts(conversion *convert, int64_t most, int32_t argument)
{
    const int64_t wrong[] = { -1, most + 1, INT64_MIN, INT64_MAX };
    const int32_t no_direction[] = { 0, 4, INT32_MIN };
    int64_t to = 77;
    for (size_t i = 0; i < COUNT_OF(wrong); i++) {
        struct muslin_problem problem = PROBLEM;
        ck_status(convert(wrong[i], 1, &to, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, argument);
        ck_assert_int_eq(problem.value, wrong[i]);
    }
    for (size_t i = 0; i < COUNT_OF(no_direction); i++) {
        struct muslin_problem problem = PROBLEM;
        ck_status(convert(1, no_direction[i], &to, &problem), MUSLIN_ERR_CHOICE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_DIRECTION);
    }
    ck_assert_int_eq(to, 77);
    ck_status(convert(1, 1, NULL, NULL), MUSLIN_ERR_NULL);
    ck_ok(convert(most, 1, &to, NULL));
}

/* With all its decimals. */
static muslin_status in_ounces(int64_t mass, int32_t direction, int64_t *to, struct muslin_problem *problem)
{
    return muslin_mass_in_ounces(mass, 3, direction, to, problem);
}

START_TEST(conversions_refuse_what_is_no_mass)
{
    struct muslin_problem problem = PROBLEM;
    int64_t to = 77;
    ck_status(muslin_mass_in_ounces(1, -1, 1, &to, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_DECIMALS);
    ck_status(muslin_mass_in_ounces(1, 4, 1, &to, NULL), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(to, 77);
    ck_converts(muslin_density_from_ounces, MUSLIN_COUNT_MAX, MUSLIN_ARG_DENSITY);
    ck_converts(in_ounces, MUSLIN_LENGTH_MAX, MUSLIN_ARG_MASS);
}
END_TEST

INIT_CALL(weight)
INIT_CALL(cost)

START_TEST(initial_values_of_weight_and_cost_are_those_of_the_macros)
{
    const struct muslin_weight_spec weight_spec = MUSLIN_WEIGHT_SPEC_INIT;
    const struct muslin_cost_spec cost_spec = MUSLIN_COST_SPEC_INIT;
    ck_init_rules(init_weight, &weight_spec, (uint32_t)sizeof weight_spec);
    ck_init_rules(init_cost, &cost_spec, (uint32_t)sizeof cost_spec);
    ck_assert_int_eq(weight_spec.step, GRAM);
    ck_assert_int_eq(weight_spec.direction, MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(cost_spec.sold, MUSLIN_COST_PIECES);
    ck_assert_int_eq(cost_spec.direction, MUSLIN_DIRECTION_NEAREST);
}
END_TEST

void add_weight_tests(Suite *suite)
{
    TCase *tcase = tcase_create("weight");
    tcase_add_test(tcase, a_quilt_weighs_what_its_layers_weigh);
    tcase_add_test(tcase, the_total_is_rounded_once);
    tcase_add_test(tcase, the_heaviest_quilt_is_still_right);
    tcase_add_test(tcase, weight_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, a_density_is_named_by_its_place);
    tcase_add_test(tcase, ounces_to_the_square_yard_become_metric);
    tcase_add_test(tcase, a_mass_becomes_ounces);
    tcase_add_test(tcase, conversions_refuse_what_is_no_mass);
    tcase_add_test(tcase, initial_values_of_weight_and_cost_are_those_of_the_macros);
    suite_add_tcase(suite, tcase);
}

/* ---- cost ------------------------------------------------------------------------------------------------------- */

enum { YARD = 36 * 8128 };

#define THING(sold, amount, price, per) \
    { (uint32_t)sizeof(struct muslin_cost_spec), 0, (amount), (price), (per), (sold), MUSLIN_DIRECTION_NEAREST }

static struct muslin_cost price(const struct muslin_cost_spec *spec)
{
    struct muslin_cost out = { .size = (uint32_t)sizeof out };
    ck_ok(muslin_cost_plan(spec, &out, NULL));
    return out;
}

START_TEST(cloth_is_paid_by_length_and_bundles_whole)
{
    /* Example: 3 1/8 yd at 11.50 the yard cost 35.94, of 35.9375; 45 strips at 42.00 for a bundle of 40 are two bundles
     * for 84.00, with 35 strips to spare. */
    struct muslin_cost_spec cloth = THING(MUSLIN_COST_LENGTH, YARD * 25 / 8, 1150, YARD);
    const struct muslin_cost_spec bundles = THING(MUSLIN_COST_BUNDLES, 45, 4200, 40);
    struct muslin_cost out = price(&cloth);
    ck_assert_int_eq(out.cost, 3594);
    ck_assert_int_eq(out.bought, YARD * 25 / 8);
    ck_assert_int_eq(out.spare, 0);
    ck_assert_int_eq(out.exact, 0);
    cloth.direction = MUSLIN_DIRECTION_DOWN;
    ck_assert_int_eq(price(&cloth).cost, 3593);
    cloth.amount = 2 * YARD;
    ck_assert_int_eq(price(&cloth).cost, 2300);
    ck_assert_int_eq(price(&cloth).exact, 1);
    out = price(&bundles);
    ck_assert_int_eq(out.bought, 2);
    ck_assert_int_eq(out.spare, 35);
    ck_assert_int_eq(out.cost, 8400);
    ck_assert_int_eq(out.exact, 1);
}
END_TEST

START_TEST(pieces_are_paid_one_by_one_or_so_many_for_a_price)
{
    struct muslin_cost_spec spec = THING(MUSLIN_COST_PIECES, 7, 500, 3);
    ck_assert_int_eq(price(&spec).cost, 1167); /* 7 x 5.00 / 3 = 11.667 */
    ck_assert_int_eq(price(&spec).bought, 7);
    ck_assert_int_eq(price(&spec).spare, 0);
    spec.per = 1;
    ck_assert_int_eq(price(&spec).cost, 3500);
    spec.per = 2;
    spec.price = 1;
    ck_assert_int_eq(price(&spec).cost, 4); /* 3.5, halves upwards */
    spec.direction = MUSLIN_DIRECTION_DOWN;
    ck_assert_int_eq(price(&spec).cost, 3);
    spec.amount = 0;
    ck_assert_int_eq(price(&spec).cost, 0);
}
END_TEST

START_TEST(a_bundle_is_bought_for_its_first_piece)
{
    struct muslin_cost_spec spec = THING(MUSLIN_COST_BUNDLES, 0, 4200, 40);
    ck_assert_int_eq(price(&spec).bought, 0);
    ck_assert_int_eq(price(&spec).spare, 0);
    spec.amount = 1;
    ck_assert_int_eq(price(&spec).bought, 1);
    ck_assert_int_eq(price(&spec).spare, 39);
    spec.amount = 40;
    ck_assert_int_eq(price(&spec).bought, 1);
    ck_assert_int_eq(price(&spec).spare, 0);
    spec.amount = 41;
    ck_assert_int_eq(price(&spec).bought, 2);
}
END_TEST

static muslin_status call_cost(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_cost_plan(spec, out, problem);
}
static const struct muslin_cost_spec good_cost = THING(MUSLIN_COST_PIECES, 7, 500, 3);
static const struct ruled cost = RULED(call_cost, good_cost, muslin_cost);

START_TEST(cost_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_cost_spec, amount, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_AMOUNT),
        OUTSIDE(muslin_cost_spec, price, 0, MUSLIN_MONEY_MAX, MUSLIN_ARG_PRICE),
        OUTSIDE(muslin_cost_spec, per, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_PRICE_PER),
        NOT_A_CHOICE(muslin_cost_spec, sold, 3, MUSLIN_ARG_AMOUNT_KIND),
        NOT_A_CHOICE(muslin_cost_spec, direction, 3, MUSLIN_ARG_DIRECTION),
    };
    const struct muslin_cost_spec cloth_spec = THING(MUSLIN_COST_LENGTH, YARD, 500, YARD);
    const struct ruled cloth = RULED(call_cost, cloth_spec, muslin_cost);
    const struct refusal of_cloth[] = {
        OUTSIDE(muslin_cost_spec, amount, 0, MUSLIN_LENGTH_MAX / 2, MUSLIN_ARG_AMOUNT),
        OUTSIDE(muslin_cost_spec, per, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_PRICE_PER),
    };
    ck_struct_rules(&cost);
    ck_no_flag_known(&cost);
    ck_refusals(&cost, refusals, COUNT_OF(refusals));
    ck_refusals(&cloth, of_cloth, COUNT_OF(of_cloth));
}
END_TEST

START_TEST(a_cost_beyond_all_money_is_an_overflow)
{
    struct muslin_cost_spec spec = THING(MUSLIN_COST_PIECES, 1, MUSLIN_MONEY_MAX, 1);
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    ck_assert_int_eq(price(&spec).cost, MUSLIN_MONEY_MAX);
    spec.amount = 3;
    spec.per = 2;
    lay_out_output(&out, cost.out_size);
    ck_status(muslin_cost_plan(&spec, (struct muslin_cost *)(void *)&out, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PRICE);
    ck_assert_int_eq(problem.value, MUSLIN_MONEY_MAX);
    ck_assert_int_eq(problem.limit, MUSLIN_MONEY_MAX);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    spec.sold = MUSLIN_COST_BUNDLES;
    ck_status(muslin_cost_plan(&spec, (struct muslin_cost *)(void *)&out, NULL), MUSLIN_ERR_OVERFLOW);
    spec.sold = MUSLIN_COST_LENGTH;
    spec.amount = MUSLIN_LENGTH_MAX / 2;
    spec.per = 1;
    ck_status(muslin_cost_plan(&spec, (struct muslin_cost *)(void *)&out, NULL), MUSLIN_ERR_OVERFLOW);
    spec.price = 2;
    ck_assert_int_eq(price(&spec).cost, MUSLIN_LENGTH_MAX - 1);
}
END_TEST

START_TEST(a_bill_adds_its_rounded_rows)
{
    /* Example: 35.94 for the cloth and 84.00 for the bundles are 119.94. */
    const struct muslin_cost_spec rows[] = {
        THING(MUSLIN_COST_LENGTH, YARD * 25 / 8, 1150, YARD),
        THING(MUSLIN_COST_BUNDLES, 45, 4200, 40),
    };
    const struct muslin_cost_spec halves[] = {
        THING(MUSLIN_COST_PIECES, 1, 1, 2), THING(MUSLIN_COST_PIECES, 1, 1, 2), THING(MUSLIN_COST_PIECES, 1, 1, 2),
    };
    int64_t total = 0;
    ck_ok(muslin_cost_total(rows, sizeof rows[0], 2, &total, NULL));
    ck_assert_int_eq(total, 11994);
    ck_ok(muslin_cost_total(halves, sizeof halves[0], 3, &total, NULL));
    ck_assert_int_eq(total, 3); /* three halves, each paid as a whole */
    ck_ok(muslin_cost_total(NULL, 0, 0, &total, NULL));
    ck_assert_int_eq(total, 0);
}
END_TEST

/* Rows at a stride of their own, misaligned on purpose, some larger than the library knows. */
START_TEST(rows_lie_at_the_callers_stride)
{
    enum { STRIDE = 61, ROWS = 3 };
    unsigned char bytes[STRIDE * ROWS];
    const uint32_t sizes[ROWS] = { 40, 48, STRIDE };
    int64_t total = 0;
    memset(bytes, 0, sizeof bytes);
    for (size_t i = 0; i < ROWS; i++) {
        struct muslin_cost_spec row = THING(MUSLIN_COST_PIECES, 1, (int64_t)(100 + i), 1);
        ck_assert_uint_eq(sizeof row, 40);
        row.size = sizes[i];
        memcpy(bytes + i * STRIDE, &row, sizeof row);
    }
    ck_ok(muslin_cost_total((const struct muslin_cost_spec *)(const void *)bytes, STRIDE, ROWS, &total, NULL));
    ck_assert_int_eq(total, 303);
}
END_TEST

static void total_fails(const struct muslin_cost_spec *rows, size_t row_size, size_t n, muslin_status status,
                        int32_t argument, int64_t at)
{
    struct muslin_problem problem = PROBLEM;
    int64_t total = 77;
    ck_status(muslin_cost_total(rows, row_size, n, &total, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.at, at);
    ck_assert_int_eq(total, 77);
}

START_TEST(a_wrong_row_is_named)
{
    struct muslin_cost_spec rows[] = { THING(1, 5, 100, 1), THING(2, 5, 100, 1), THING(3, 5, 100, 1) };
    const size_t stride = sizeof rows[0];
    rows[1].price = -1;
    total_fails(rows, stride, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRICE, 1);
    rows[1].price = 100;
    rows[2].sold = 4;
    total_fails(rows, stride, 3, MUSLIN_ERR_CHOICE, MUSLIN_ARG_AMOUNT_KIND, 2);
    rows[2].sold = 3;
    rows[1].flags = 1;
    total_fails(rows, stride, 3, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS, 1);
    rows[1].flags = 0;
    rows[2].size = (uint32_t)stride + 1;
    total_fails(rows, stride, 3, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS, 2);
    total_fails(rows, stride - 1, 3, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, 0);
    total_fails(rows, 4097, 3, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, 0);
    total_fails(NULL, stride, 1, MUSLIN_ERR_NULL, MUSLIN_ARG_ROWS, 0);
    ck_status(muslin_cost_total(rows, stride, 1, NULL, NULL), MUSLIN_ERR_NULL);
    struct muslin_problem problem = PROBLEM;
    int64_t total = 77;
    problem.size = 1;
    ck_status(muslin_cost_total(rows, stride, 1, &total, &problem), MUSLIN_ERR_STRUCT_SIZE);
}
END_TEST

START_TEST(a_total_beyond_all_money_is_an_overflow)
{
    struct muslin_cost_spec rows[] = { THING(2, 1, MUSLIN_MONEY_MAX - 5, 1), THING(2, 1, 5, 1) };
    int64_t total = 0;
    ck_ok(muslin_cost_total(rows, sizeof rows[0], 2, &total, NULL));
    ck_assert_int_eq(total, MUSLIN_MONEY_MAX);
    rows[1].price = 6;
    total_fails(rows, sizeof rows[0], 2, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PRICE, 1);
    const struct muslin_cost_spec other_way[] = { rows[1], rows[0] };
    total_fails(other_way, sizeof rows[0], 2, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PRICE, 1);
    rows[0].amount = 2;
    total_fails(rows, sizeof rows[0], 2, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PRICE, 0);
}
END_TEST

void add_cost_tests(Suite *suite)
{
    TCase *tcase = tcase_create("cost");
    tcase_add_test(tcase, cloth_is_paid_by_length_and_bundles_whole);
    tcase_add_test(tcase, pieces_are_paid_one_by_one_or_so_many_for_a_price);
    tcase_add_test(tcase, a_bundle_is_bought_for_its_first_piece);
    tcase_add_test(tcase, cost_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, a_cost_beyond_all_money_is_an_overflow);
    tcase_add_test(tcase, a_bill_adds_its_rounded_rows);
    tcase_add_test(tcase, rows_lie_at_the_callers_stride);
    tcase_add_test(tcase, a_wrong_row_is_named);
    tcase_add_test(tcase, a_total_beyond_all_money_is_an_overflow);
    suite_add_tcase(suite, tcase);
}
