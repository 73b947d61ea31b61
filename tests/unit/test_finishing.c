/* test_finishing.c - the finishing suite.
 *
 * SPDX-License-Identifier: MIT */
#include "test_finishing.h"

static void set_member(union roomy *spec, const struct refusal *value)
{
    int32_t narrow = (int32_t)value->value;
    if (value->width == sizeof narrow)
        memcpy(spec->bytes + value->offset, &narrow, sizeof narrow);
    else
        memcpy(spec->bytes + value->offset, &value->value, sizeof value->value);
}

static void refused_once(const struct ruled *ruled, const struct refusal *refusal)
{
    union roomy spec;
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out(&spec, ruled->spec, ruled->spec_size);
    set_member(&spec, refusal);
    lay_out_output(&out, ruled->out_size);
    ck_status(ruled->call(&spec, &out, &problem), refusal->status);
    ck_assert_int_eq(problem.status, refusal->status);
    ck_assert_msg(problem.argument == refusal->argument, "at %zu: %s", refusal->offset, problem.text);
    ck_assert_int_eq(problem.value, refusal->value);
    ck_assert_uint_eq(out.head[0], ruled->out_size);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
}

void refused(const struct ruled *ruled, const struct refusal *refusals, size_t count)
{
    for (size_t i = 0; i < count; i++)
        refused_once(ruled, &refusals[i]);
}

Suite *finishing_suite(void);

Suite *finishing_suite(void)
{
    Suite *suite = suite_create("finishing");
    add_finishing_binding(suite);
    add_finishing_bias(suite);
    add_finishing_batting(suite);
    add_finishing_backing(suite);
    add_finishing_hanging(suite);
    return suite;
}
