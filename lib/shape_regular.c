/* shape_regular.c - regular polygons by one of their measures.
 *
 * SPDX-License-Identifier: MIT
 *
 * The square of any measure over the square of the side is a + b sqrt(2) in fractions, and so is that of two measures.
 * A number is compared with the root of such a value by squaring it: no root within a root is ever drawn. */
#include "shape_roots.h"

#include "muslin/shape.h"

/* (a + b sqrt(2)) / c */
struct square {
    int64_t a, b, c;
};

enum { KINDS = 4, MEASURES = 4 };

/* Squares of side, flats, corners and centre to corner of a polygon with side 1: triangle, square, hexagon, octagon. */
static const struct square measures[KINDS][MEASURES] = {
    { { 1, 0, 1 }, { 3, 0, 4 }, { 1, 0, 1 }, { 1, 0, 3 } },
    { { 1, 0, 1 }, { 1, 0, 1 }, { 2, 0, 1 }, { 1, 0, 2 } },
    { { 1, 0, 1 }, { 3, 0, 1 }, { 4, 0, 1 }, { 1, 0, 1 } },
    { { 1, 0, 1 }, { 3, 2, 1 }, { 4, 2, 1 }, { 2, 1, 2 } },
};

/* Squares of twice the area: 3/4, 4, 27, (4 + 4 sqrt(2))^2. */
static const struct square areas[KINDS] = { { 3, 0, 4 }, { 4, 0, 1 }, { 27, 0, 1 }, { 48, 32, 1 } };

static struct square product(struct square x, struct square y)
{
    struct square result = { x.a * y.a + 2 * x.b * y.b, x.a * y.b + x.b * y.a, x.c * y.c };
    return result;
}

/* 1 / x = c (a - b sqrt(2)) / (a^2 - 2 b^2) */
static struct square inverse(struct square x)
{
    struct square result = { x.a * x.c, -x.b * x.c, x.a * x.a - 2 * x.b * x.b };
    return result;
}

static struct msl_big times(struct msl_wide wide, int64_t factor)
{
    struct msl_big a = msl_big_of(wide);
    struct msl_big b = msl_big_of(msl_wide_from(factor));
    struct msl_big product;
    msl_big_multiply(&product, &a, &b);
    return product;
}

/* Is (number / 2)^2 <= x times `by`? -1 below, 0 equal, 1 above: the sign of x by - number^2 / 4. */
static int32_t sign_against(const struct square *x, struct msl_wide by, int64_t number)
{
    struct msl_big whole = times(by, 4 * x->a);
    struct msl_big part = times(msl_wide_multiply(number, number), x->c);
    msl_big_subtract(&whole, &part);
    part = times(by, 4 * x->b);
    struct msl_big two = msl_big_of(msl_wide_from(2));
    struct msl_big root;
    msl_big_root(&root, &part, &two);
    return msl_big_sign(&whole, &root);
}

/* The root of x times `by`, which is below 2^62, by narrowing. */
static struct msl_exact root_of(struct square x, struct msl_wide by)
{
    struct msl_exact exact;
    int64_t halves = 0;
    for (int64_t digit = INT64_C(1) << 62; digit != 0; digit /= 2)
        if (sign_against(&x, by, halves + digit) >= 0)
            halves += digit;
    exact.floor = halves / 2;
    exact.upper_half = halves % 2 != 0;
    exact.on_tick = !exact.upper_half && sign_against(&x, by, halves) == 0;
    return exact;
}

static muslin_len rounded(struct square x, struct msl_wide by, const struct muslin_rounding_spec *to)
{
    struct muslin_rounded result = { 0 };
    (void)msl_grid_round(root_of(x, by), to, &result); /* below 2^33: cannot overflow */
    return result.value;
}

static int32_t kind_of(int32_t sides)
{
    switch (sides) {
    case 3:
        return 0;
    case 4:
        return 1;
    case 6:
        return 2;
    case 8:
        return 3;
    default:
        return -1;
    }
}

muslin_status muslin_shape_regular_polygon(int32_t sides, int32_t measure, muslin_len length,
                                           const struct muslin_rounding_spec *rounding,
                                           struct muslin_regular_polygon *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec to = { 0 };
    struct muslin_regular_polygon regular = { 0 };
    int32_t kind = kind_of(sides);
    if (kind < 0)
        msl_fail(&check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_SIDES, sides, 8);
    msl_want_choice(&check, MUSLIN_ARG_MEASURE, measure, MUSLIN_POLYGON_MEASURE_SIDE, MUSLIN_POLYGON_MEASURE_CENTRE);
    msl_want_some_size(&check, MUSLIN_ARG_LENGTH, length);
    msl_read_rounding(&check, &to, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct square side = inverse(measures[kind][measure - 1]);
    int64_t by = length * length;
    struct square area = product(product(side, side), areas[kind]);
    struct msl_exact exact = root_of(area, msl_wide_multiply(by, by));
    regular.area = exact.floor + exact.upper_half;
    if (regular.area > MUSLIN_LENGTH_MAX)
        return msl_fail(&check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_LENGTH, length, 0);
    regular.side = rounded(product(side, measures[kind][0]), msl_wide_from(by), &to);
    regular.flats = rounded(product(side, measures[kind][1]), msl_wide_from(by), &to);
    regular.corners = rounded(product(side, measures[kind][2]), msl_wide_from(by), &to);
    regular.centre = rounded(product(side, measures[kind][3]), msl_wide_from(by), &to);
    msl_write_struct(out, &regular, (uint32_t)sizeof regular);
    return MUSLIN_OK;
}
