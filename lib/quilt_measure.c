/* quilt_measure.c - lengths by name, fixed, as sums, and as far as a node extends.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_store.h"

enum { SUM_SPEC_LEAST = sizeof(struct muslin_quilt_sum_spec), TERMS_MOST = 64, FACTOR_MOST = 1048576, SUM_TERM = 2 };

muslin_status muslin_quilt_sum_spec_init(struct muslin_quilt_sum_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_sum_spec initial = MUSLIN_QUILT_SUM_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, SUM_SPEC_LEAST);
}

static uint32_t add_named(struct msl_check *check, struct muslin_quilt *quilt, const char *name, size_t bytes,
                          muslin_len value)
{
    int32_t *args = msl_begin(check, quilt, 4);
    if (args == NULL)
        return 0;
    uint32_t first = msl_keep_name(check, quilt, name, bytes);
    if (check->status != MUSLIN_OK)
        return 0;
    msl_put_long(args, value);
    args[2] = (int32_t)first;
    args[3] = (int32_t)bytes;
    return msl_end_measure(check, quilt, MUSLIN_MEASURE_NAMED, 4);
}

muslin_status muslin_quilt_measure(struct muslin_quilt *quilt, const char *name, size_t bytes, muslin_len value,
                                   muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_name(&check, name, bytes);
    msl_want_size(&check, MUSLIN_ARG_VALUE, value);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    uint32_t names = quilt->names_used;
    uint32_t measure = add_named(&check, quilt, name, bytes, value);
    if (check.status != MUSLIN_OK)
        quilt->names_used = names;
    return msl_give_measure(&check, quilt, mark, measure, out);
}

muslin_status muslin_quilt_fixed(struct muslin_quilt *quilt, muslin_len value, muslin_id *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_size(&check, MUSLIN_ARG_VALUE, value);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    int32_t *args = msl_begin(&check, quilt, 2);
    if (args == NULL)
        return check.status;
    msl_put_long(args, value);
    return msl_give_measure(&check, quilt, mark, msl_end_measure(&check, quilt, MUSLIN_MEASURE_FIXED, 2), out);
}

muslin_status muslin_quilt_sum(struct muslin_quilt *quilt, const struct muslin_quilt_sum_spec *terms, size_t row_size,
                               size_t n, muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_pointer(&check, MUSLIN_ARG_ROWS, terms);
    msl_want_row_size(&check, row_size, SUM_SPEC_LEAST);
    msl_want_between(&check, MUSLIN_ARG_PIECES, n > TERMS_MOST ? TERMS_MOST + 1 : (int64_t)n, 1, TERMS_MOST);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    int32_t *args = msl_begin(&check, quilt, SUM_TERM * (uint32_t)n);
    for (size_t i = 0; args != NULL && i < n; i++) {
        struct muslin_quilt_sum_spec in;
        const void *row = msl_row_to_read(&check, terms, row_size, i);
        msl_read_struct(&check, MUSLIN_ARG_ROWS, &in, sizeof in, SUM_SPEC_LEAST, 0, row);
        args[SUM_TERM * i] = (int32_t)msl_want_id(&check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, in.measure);
        msl_want_between(&check, MUSLIN_ARG_FACTOR, in.factor, -FACTOR_MOST, FACTOR_MOST);
        args[SUM_TERM * i + 1] = (int32_t)in.factor;
    }
    if (check.status != MUSLIN_OK)
        return check.status;
    check.at = 0;
    uint32_t measure = msl_end_measure(&check, quilt, MUSLIN_MEASURE_SUM, SUM_TERM * (uint32_t)n);
    return msl_give_measure(&check, quilt, mark, measure, out);
}

uint32_t msl_add_extent(struct msl_check *check, struct muslin_quilt *quilt, uint32_t node, int32_t axis)
{
    int32_t *args = msl_begin(check, quilt, 2);
    if (args == NULL)
        return 0;
    args[0] = (int32_t)node;
    args[1] = axis;
    return msl_end_measure(check, quilt, MUSLIN_MEASURE_EXTENT, 2);
}

muslin_status muslin_quilt_extent(struct muslin_quilt *quilt, muslin_id node, int32_t axis, muslin_id *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_choice(&check, MUSLIN_ARG_AXIS, axis, MUSLIN_AXIS_ACROSS, MUSLIN_AXIS_DOWN);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    return msl_give_measure(&check, quilt, mark, msl_add_extent(&check, quilt, number, axis), out);
}

muslin_status muslin_quilt_seam(const struct muslin_quilt *quilt, muslin_id *allowance, muslin_id *take_up,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_pointer(&check, MUSLIN_ARG_QUILT, quilt);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (allowance != NULL)
        *allowance = msl_id(quilt, MUSLIN_SORT_MEASURE, MSL_ALLOWANCE);
    if (take_up != NULL)
        *take_up = msl_id(quilt, MUSLIN_SORT_MEASURE, MSL_TAKE_UP);
    return MUSLIN_OK;
}
