/* test_finishing.h - what the tests of the finishing module share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_FINISHING_H
#define MUSLIN_TEST_FINISHING_H

#include "struct_rules.h"

/* A member set to a value that must be refused, and how. */
struct refusal {
    size_t offset;
    size_t width;
    int64_t value;
    muslin_status status;
    int32_t argument;
};
#define REFUSAL(type, member, value, status, argument) \
    { offsetof(struct type, member), sizeof(((struct type *)0)->member), (value), (status), (argument) }
/* What every size refuses. */
#define SIZES_BAD(type, member, argument)                                          \
    REFUSAL(type, member, -1, MUSLIN_ERR_RANGE, argument),                         \
        REFUSAL(type, member, MUSLIN_SIZE_MAX + 1, MUSLIN_ERR_RANGE, argument),    \
        REFUSAL(type, member, INT64_MIN, MUSLIN_ERR_RANGE, argument),              \
        REFUSAL(type, member, INT64_MAX, MUSLIN_ERR_RANGE, argument)
#define COUNT_OF(array) (sizeof(array) / sizeof((array)[0]))

/* Each refusal gives its status, names argument and value, and leaves the output alone. */
void refused(const struct ruled *ruled, const struct refusal *refusals, size_t count);

void add_finishing_binding(Suite *suite);
void add_finishing_bias(Suite *suite);
void add_finishing_batting(Suite *suite);
void add_finishing_backing(Suite *suite);
void add_finishing_hanging(Suite *suite);

#endif
