/* length.c - exact arithmetic with lengths, rounding, array forms, irrational sizes.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/length.h"

#include "root.h"
#include "wide.h"

/* ---- the range --------------------------------------------------------------------------------------------------- */

/*@ assigns \nothing;
  @ ensures \result != 0 <==> (a < -MUSLIN_LENGTH_MAX || a > MUSLIN_LENGTH_MAX); */
static int out_of_range(int64_t a)
{
    return a < -MUSLIN_LENGTH_MAX || a > MUSLIN_LENGTH_MAX;
}

/*@ requires \valid(out);
  @ assigns *out;
  @ ensures \result == MUSLIN_OK <==> \abs(a) <= MUSLIN_LENGTH_MAX;
  @ ensures \result == MUSLIN_OK ==> *out == a;
  @ ensures \result != MUSLIN_OK ==> \result == MUSLIN_ERR_OVERFLOW && *out == \old(*out); */
static muslin_status store(int64_t a, muslin_len *out)
{
    if (out_of_range(a))
        return MUSLIN_ERR_OVERFLOW;
    *out = a;
    return MUSLIN_OK;
}

/*@ assigns \nothing;
  @ ensures \result != 0 <==> \abs(wide_value(a)) > MUSLIN_LENGTH_MAX; */
static int wide_out_of_range(struct msl_wide a)
{
    return msl_wide_compare(a, msl_wide_from(MUSLIN_LENGTH_MAX)) > 0 ||
           msl_wide_compare(a, msl_wide_from(-MUSLIN_LENGTH_MAX)) < 0;
}

/* Within the range the lower limb is the number. */
/*@ requires \valid(out);
  @ assigns *out;
  @ ensures \result == MUSLIN_OK <==> \abs(wide_value(a)) <= MUSLIN_LENGTH_MAX;
  @ ensures \result == MUSLIN_OK ==> *out == wide_value(a);
  @ ensures \result != MUSLIN_OK ==> \result == MUSLIN_ERR_OVERFLOW && *out == \old(*out); */
static muslin_status store_wide(struct msl_wide a, muslin_len *out)
{
    if (wide_out_of_range(a))
        return MUSLIN_ERR_OVERFLOW;
    *out = a.high < 0 ? -1 - (int64_t)(UINT64_MAX - a.low) : (int64_t)a.low;
    return MUSLIN_OK;
}

/* ---- sums and products ------------------------------------------------------------------------------------------- */

/* Both within +-(2^62 - 1), so their sum fits before it is judged. */
/*@ requires out == \null || \valid(out);
  @ assigns *out;
  @ ensures \result == MUSLIN_ERR_NULL <==> out == \null;
  @ ensures \result == MUSLIN_ERR_RANGE <==>
  @         out != \null && (\abs(a) > MUSLIN_LENGTH_MAX || \abs(b) > MUSLIN_LENGTH_MAX);
  @ ensures \result == MUSLIN_OK ==> *out == a + b && \abs(*out) <= MUSLIN_LENGTH_MAX;
  @ ensures \result == MUSLIN_ERR_OVERFLOW ==> \abs(a + b) > MUSLIN_LENGTH_MAX;
  @ ensures out != \null && \result != MUSLIN_OK ==> *out == \old(*out); */
muslin_status muslin_length_add(muslin_len a, muslin_len b, muslin_len *out)
{
    if (out == NULL)
        return MUSLIN_ERR_NULL;
    if (out_of_range(a) || out_of_range(b))
        return MUSLIN_ERR_RANGE;
    return store(a + b, out);
}

/*@ requires out == \null || \valid(out);
  @ assigns *out;
  @ ensures \result == MUSLIN_ERR_NULL <==> out == \null;
  @ ensures \result == MUSLIN_ERR_RANGE <==>
  @         out != \null && (\abs(a) > MUSLIN_LENGTH_MAX || \abs(b) > MUSLIN_LENGTH_MAX);
  @ ensures \result == MUSLIN_OK ==> *out == a - b && \abs(*out) <= MUSLIN_LENGTH_MAX;
  @ ensures \result == MUSLIN_ERR_OVERFLOW ==> \abs(a - b) > MUSLIN_LENGTH_MAX;
  @ ensures out != \null && \result != MUSLIN_OK ==> *out == \old(*out); */
muslin_status muslin_length_subtract(muslin_len a, muslin_len b, muslin_len *out)
{
    if (out == NULL)
        return MUSLIN_ERR_NULL;
    if (out_of_range(a) || out_of_range(b))
        return MUSLIN_ERR_RANGE;
    return store(a - b, out);
}

/*@ requires out == \null || \valid(out);
  @ assigns *out;
  @ ensures \result == MUSLIN_ERR_NULL <==> out == \null;
  @ ensures \result == MUSLIN_ERR_RANGE <==> out != \null && \abs(a) > MUSLIN_LENGTH_MAX;
  @ ensures \result == MUSLIN_OK ==> *out == a * factor && \abs(*out) <= MUSLIN_LENGTH_MAX;
  @ ensures \result == MUSLIN_ERR_OVERFLOW ==> \abs(a * factor) > MUSLIN_LENGTH_MAX;
  @ ensures out != \null && \result != MUSLIN_OK ==> *out == \old(*out); */
muslin_status muslin_length_multiply(muslin_len a, int64_t factor, muslin_len *out)
{
    if (out == NULL)
        return MUSLIN_ERR_NULL;
    if (out_of_range(a))
        return MUSLIN_ERR_RANGE;
    return store_wide(msl_wide_multiply(a, factor), out);
}

/* ---- rounding ---------------------------------------------------------------------------------------------------- */

muslin_status muslin_rounding_spec_init(struct muslin_rounding_spec *spec, uint32_t size)
{
    const struct muslin_rounding_spec initial = MUSLIN_ROUNDING_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* What every rounded call checks: output, rounding, and that the length lies between least and most. */
static struct msl_check check_rounded(muslin_len a, muslin_len least, muslin_len most,
                                      const struct muslin_rounding_spec *rounding, struct muslin_rounding_spec *into,
                                      const struct muslin_rounded *out)
{
    struct msl_check check = msl_check_start(NULL);
    msl_read_rounding(&check, into, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_between(&check, MUSLIN_ARG_LENGTH, a, least, most);
    return check;
}

static muslin_status divide_wide(struct msl_wide numerator, int64_t denominator,
                                 const struct muslin_rounding_spec *rounding, struct muslin_rounded *out)
{
    struct muslin_rounded result = { 0 };
    muslin_status status = msl_wide_round(numerator, denominator, rounding, &result);
    if (status == MUSLIN_OK)
        msl_write_struct(out, &result, (uint32_t)sizeof result);
    return status;
}

muslin_status muslin_length_divide(muslin_len a, int64_t divisor, const struct muslin_rounding_spec *rounding,
                                   struct muslin_rounded *out)
{
    struct muslin_rounding_spec how;
    struct msl_check check = check_rounded(a, -MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX, rounding, &how, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (divisor == 0)
        return MUSLIN_ERR_DIVIDE_BY_ZERO;
    /* The least int64_t has no opposite; a length over it is above -1/2 and below 1/2, like one over its neighbour,
     * and of the same sign. */
    if (divisor == INT64_MIN)
        return divide_wide(msl_wide_from(-a), INT64_MAX, &how, out);
    if (divisor < 0)
        return divide_wide(msl_wide_from(-a), -divisor, &how, out);
    return divide_wide(msl_wide_from(a), divisor, &how, out);
}

muslin_status muslin_length_scale(muslin_len a, int64_t numerator, int64_t denominator,
                                  const struct muslin_rounding_spec *rounding, struct muslin_rounded *out)
{
    struct muslin_rounding_spec how;
    struct msl_check check = check_rounded(a, -MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX, rounding, &how, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (denominator == 0)
        return MUSLIN_ERR_DIVIDE_BY_ZERO;
    if (denominator < 0)
        return MUSLIN_ERR_RANGE;
    return divide_wide(msl_wide_multiply(a, numerator), denominator, &how, out);
}

muslin_status muslin_length_snap(muslin_len a, const struct muslin_rounding_spec *rounding, struct muslin_rounded *out)
{
    return muslin_length_divide(a, 1, rounding, out);
}

int32_t muslin_length_compare(muslin_len a, muslin_len b)
{
    if (a == b)
        return 0;
    return a < b ? -1 : 1;
}

/* ---- sums over arrays -------------------------------------------------------------------------------------------- */

static int any_out_of_range(const muslin_len *values, size_t n)
{
    for (size_t i = 0; i < n; i++)
        if (out_of_range(values[i]))
            return 1;
    return 0;
}

muslin_status muslin_length_sum(const muslin_len *values, size_t n, muslin_len *out)
{
    struct msl_wide sum = msl_wide_from(0);
    if (out == NULL || (n != 0 && values == NULL))
        return MUSLIN_ERR_NULL;
    if (any_out_of_range(values, n))
        return MUSLIN_ERR_RANGE;
    for (size_t i = 0; i < n; i++)
        sum = msl_wide_add(sum, msl_wide_from(values[i]));
    return store_wide(sum, out);
}

/* Three limbs: products reach 2^125, and there may be 2^64 of them. The products are kept in two sums, of their upper
 * and lower limbs, which cannot wrap for any n that fits in memory. */
struct product_sum {
    struct msl_wide high; /* in units of 2^64 */
    struct msl_wide low;
};

static struct product_sum add_product(struct product_sum sum, struct msl_wide product)
{
    struct msl_wide low = { 0, product.low };
    sum.high = msl_wide_add(sum.high, msl_wide_from(product.high));
    sum.low = msl_wide_add(sum.low, low);
    return sum;
}

/* The carry of the lower sum joins the upper one. What is above its sign must be nothing: a total within the range has
 * 0 or -1 there. */
static muslin_status store_product_sum(struct product_sum sum, muslin_len *out)
{
    struct msl_wide high = msl_wide_add(sum.high, msl_wide_from(sum.low.high));
    struct msl_wide total = { high.high, sum.low.low };
    if (msl_wide_compare(high, msl_wide_from(high.high)) != 0)
        return MUSLIN_ERR_OVERFLOW;
    return store_wide(total, out);
}

muslin_status muslin_length_dot(const muslin_len *lengths, const int64_t *counts, size_t n, muslin_len *out)
{
    struct product_sum sum = { 0 };
    if (out == NULL || (n != 0 && (lengths == NULL || counts == NULL)))
        return MUSLIN_ERR_NULL;
    if (any_out_of_range(lengths, n))
        return MUSLIN_ERR_RANGE;
    for (size_t i = 0; i < n; i++)
        sum = add_product(sum, msl_wide_multiply(lengths[i], counts[i]));
    return store_product_sum(sum, out);
}

/* ---- array forms ------------------------------------------------------------------------------------------------- */

/* What one element's status does to the call. Returns 1 when the call must stop. */
static int stops_at(size_t i, muslin_status status, muslin_status *statuses, size_t *failed)
{
    if (statuses != NULL) {
        statuses[i] = status;
        return 0;
    }
    if (status != MUSLIN_OK && failed != NULL)
        *failed = i;
    return status != MUSLIN_OK;
}

/* A sum or product of a length and a second number. */
typedef muslin_status pair_sum(muslin_len a, int64_t b, muslin_len *out);

/* Arrays of such pairs; null ones only where they are empty. */
struct pairs {
    const muslin_len *a;
    const int64_t *b;
    size_t n;
    muslin_len *out;
    muslin_status *statuses;
    size_t *failed;
};

static int any_is_missing(const struct pairs *pairs)
{
    return pairs->n != 0 && (pairs->a == NULL || pairs->b == NULL || pairs->out == NULL);
}

/* The pairs from `first` to before `end`, one by one. */
static muslin_status each_pair(const struct pairs *pairs, size_t first, size_t end, pair_sum *sum)
{
    for (size_t i = first; i < end; i++) {
        muslin_status status = sum(pairs->a[i], pairs->b[i], &pairs->out[i]);
        if (stops_at(i, status, pairs->statuses, pairs->failed))
            return status;
    }
    return MUSLIN_OK;
}

/* The same where no sum can fail: all are far within the range. Returns 0, and does nothing, where some are not. */
static int whole_block(const struct pairs *pairs, size_t first, size_t end, int subtracted)
{
    const int64_t far = INT64_C(1) << 60;
    const muslin_len *a = pairs->a, *b = pairs->b;
    const size_t n = end - first;
    muslin_len *out = pairs->out;
    if (!msl_all_within(a + first, n, -far, 2 * far) || !msl_all_within(b + first, n, -far, 2 * far))
        return 0;
    for (size_t i = first; i < end; i++)
        out[i] = subtracted ? a[i] - b[i] : a[i] + b[i];
    for (size_t i = first; pairs->statuses != NULL && i < end; i++)
        pairs->statuses[i] = MUSLIN_OK;
    return 1;
}

static muslin_status each_sum(const struct pairs *pairs, pair_sum *sum, int subtracted)
{
    muslin_status status = any_is_missing(pairs) ? MUSLIN_ERR_NULL : MUSLIN_OK;
    size_t end;
    for (size_t first = 0; status == MUSLIN_OK && first < pairs->n; first = end) {
        end = msl_block_end(first, pairs->n);
        if (!whole_block(pairs, first, end, subtracted))
            status = each_pair(pairs, first, end, sum);
    }
    return status;
}

muslin_status muslin_length_add_n(const muslin_len *a, const muslin_len *b, size_t n, muslin_len *out,
                                  muslin_status *statuses, size_t *failed)
{
    const struct pairs pairs = { a, b, n, out, statuses, failed };
    return each_sum(&pairs, muslin_length_add, 0);
}

muslin_status muslin_length_subtract_n(const muslin_len *a, const muslin_len *b, size_t n, muslin_len *out,
                                       muslin_status *statuses, size_t *failed)
{
    const struct pairs pairs = { a, b, n, out, statuses, failed };
    return each_sum(&pairs, muslin_length_subtract, 1);
}

muslin_status muslin_length_multiply_n(const muslin_len *a, const int64_t *factors, size_t n, muslin_len *out,
                                       muslin_status *statuses, size_t *failed)
{
    const struct pairs pairs = { a, factors, n, out, statuses, failed };
    return any_is_missing(&pairs) ? MUSLIN_ERR_NULL : each_pair(&pairs, 0, n, muslin_length_multiply);
}

/* One element of the scaled forms, the rounding already checked. */
static muslin_status scale_one(muslin_len a, int64_t numerator, int64_t denominator,
                               const struct muslin_rounding_spec *how, muslin_len *out)
{
    struct muslin_rounded result;
    if (out_of_range(a))
        return MUSLIN_ERR_RANGE;
    muslin_status status = msl_wide_round(msl_wide_multiply(a, numerator), denominator, how, &result);
    if (status == MUSLIN_OK)
        *out = result.value;
    return status;
}

muslin_status muslin_length_scale_n(const muslin_len *a, size_t n, int64_t numerator, int64_t denominator,
                                    const struct muslin_rounding_spec *rounding, muslin_len *out,
                                    muslin_status *statuses, size_t *failed)
{
    struct muslin_rounding_spec how;
    struct msl_check check = msl_check_start(NULL);
    msl_read_rounding(&check, &how, rounding);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (denominator == 0)
        return MUSLIN_ERR_DIVIDE_BY_ZERO;
    if (denominator < 0)
        return MUSLIN_ERR_RANGE;
    if (n != 0 && (a == NULL || out == NULL))
        return MUSLIN_ERR_NULL;
    for (size_t i = 0; i < n; i++) {
        muslin_status status = scale_one(a[i], numerator, denominator, &how, &out[i]);
        if (stops_at(i, status, statuses, failed))
            return status;
    }
    return MUSLIN_OK;
}

muslin_status muslin_length_snap_n(const muslin_len *a, size_t n, const struct muslin_rounding_spec *rounding,
                                   muslin_len *out, muslin_status *statuses, size_t *failed)
{
    return muslin_length_scale_n(a, n, 1, 1, rounding, out, statuses, failed);
}

/* ---- irrational sizes -------------------------------------------------------------------------------------------- */

/* sqrt(radicand) / divisor, written to the caller's struct. */
static void write_root(uint64_t radicand, int64_t divisor, const struct muslin_rounding_spec *how,
                       struct muslin_rounded *out)
{
    struct muslin_rounded result = { 0 };
    msl_root_round(radicand, divisor, how, &result);
    msl_write_struct(out, &result, (uint32_t)sizeof result);
}

/* sqrt(times a a) / divisor. a is at most 2^30, so 12 a a is below 2^64. */
static muslin_status root_of_square(muslin_len a, uint64_t times, int64_t divisor,
                                    const struct muslin_rounding_spec *rounding, struct muslin_rounded *out)
{
    struct muslin_rounding_spec how;
    struct msl_check check = check_rounded(a, 0, MUSLIN_SIZE_MAX, rounding, &how, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    write_root(times * (uint64_t)a * (uint64_t)a, divisor, &how, out);
    return MUSLIN_OK;
}

muslin_status muslin_length_times_root2(muslin_len a, const struct muslin_rounding_spec *rounding,
                                        struct muslin_rounded *out)
{
    return root_of_square(a, 2, 1, rounding, out);
}

/* a / sqrt 2 = sqrt(2 a a) / 2 */
muslin_status muslin_length_over_root2(muslin_len a, const struct muslin_rounding_spec *rounding,
                                       struct muslin_rounded *out)
{
    return root_of_square(a, 2, 2, rounding, out);
}

/* a sqrt 3 / 2 = sqrt(3 a a) / 2 */
muslin_status muslin_length_equilateral_height(muslin_len a, const struct muslin_rounding_spec *rounding,
                                               struct muslin_rounded *out)
{
    return root_of_square(a, 3, 2, rounding, out);
}

/* 2 a / sqrt 3 = sqrt(12 a a) / 3 */
muslin_status muslin_length_equilateral_side(muslin_len a, const struct muslin_rounding_spec *rounding,
                                             struct muslin_rounded *out)
{
    return root_of_square(a, 12, 3, rounding, out);
}

muslin_status muslin_length_hypotenuse(muslin_len a, muslin_len b, const struct muslin_rounding_spec *rounding,
                                       struct muslin_rounded *out)
{
    struct muslin_rounding_spec how;
    struct msl_check check = check_rounded(a, 0, MUSLIN_SIZE_MAX, rounding, &how, out);
    msl_want_size(&check, MUSLIN_ARG_OTHER_LENGTH, b);
    if (check.status != MUSLIN_OK)
        return check.status;
    write_root((uint64_t)a * (uint64_t)a + (uint64_t)b * (uint64_t)b, 1, &how, out);
    return MUSLIN_OK;
}

/* The area is doubled: side = sqrt(area / 2) = sqrt(2 area) / 2. */
muslin_status muslin_length_root_of_area(int64_t area, const struct muslin_rounding_spec *rounding,
                                         struct muslin_rounded *out)
{
    const int64_t most = 2 * MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX;
    struct muslin_rounding_spec how;
    struct msl_check check = check_rounded(area, 0, most, rounding, &how, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    write_root(2 * (uint64_t)area, 2, &how, out);
    return MUSLIN_OK;
}
