/* refusals.h - members set to values that a call must refuse.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_REFUSALS_H
#define MUSLIN_REFUSALS_H

#include <stdio.h>

#include "struct_rules.h"

#define COUNT_OF(array) (sizeof(array) / sizeof((array)[0]))

/* One member, 32 or 64 bits wide, one value, and how it is refused. */
struct refusal {
    size_t offset;
    size_t width;
    int64_t value;
    muslin_status status;
    int32_t argument;
    int is_limited; /* the limit is known */
    int64_t limit;
};
#define REFUSAL(type, member, value, status, argument) \
    { offsetof(struct type, member), sizeof(((struct type *)0)->member), (value), (status), (argument), 0, 0 }
#define BEYOND(type, member, value, limit, argument) \
    { offsetof(struct type, member), sizeof(((struct type *)0)->member), (value), MUSLIN_ERR_RANGE, (argument), 1, \
      (limit) }
/* What lies just outside a range, and far outside. */
#define OUTSIDE(type, member, least, most, argument)                  \
    BEYOND(type, member, (least) - 1, least, argument),               \
        BEYOND(type, member, (most) + 1, most, argument),             \
        BEYOND(type, member, INT64_MIN, least, argument),             \
        BEYOND(type, member, INT64_MAX, most, argument)
/* The limit is the last choice. */
#define NONE_OF(type, member, value, last, argument) \
    { offsetof(struct type, member), sizeof(((struct type *)0)->member), (value), MUSLIN_ERR_CHOICE, (argument), 1, \
      (last) }
#define NOT_A_CHOICE(type, member, last, argument)      \
    NONE_OF(type, member, 0, last, argument),           \
        NONE_OF(type, member, (last) + 1, last, argument), \
        NONE_OF(type, member, INT32_MIN, last, argument)

static inline void set_member(union roomy *spec, const struct refusal *refusal)
{
    int32_t narrow = (int32_t)refusal->value;
    if (refusal->width == sizeof narrow)
        memcpy(spec->bytes + refusal->offset, &narrow, sizeof narrow);
    else
        memcpy(spec->bytes + refusal->offset, &refusal->value, sizeof refusal->value);
}

/* Which of the members that share its argument it is, in their order in the struct. */
static inline int64_t rank_of(const struct refusal *refusals, size_t count, const struct refusal *refusal)
{
    int64_t rank = 0;
    size_t last = refusal->offset;
    for (size_t before = last; ; last = before, rank++) {
        for (size_t i = 0; i < count; i++)
            if (refusals[i].argument == refusal->argument && refusals[i].offset < last &&
                (before == last || refusals[i].offset > before))
                before = refusals[i].offset;
        if (before == last)
            return rank;
    }
}

static inline int ends_with(const char *text, const char *end)
{
    const size_t length = strlen(text), least = strlen(end);
    return length >= least && strcmp(text + length - least, end) == 0;
}

/* The sentence names the argument, whose first letter may be a capital, and ends with the last choice, or with what its
 * status says of all methods. */
static inline void ck_sentence(const struct muslin_problem *problem)
{
    char last[32];
    snprintf(last, sizeof last, " %lld.", (long long)problem->limit);
    ck_assert_msg(strstr(problem->text, muslin_argument_words(problem->argument) + 1) != NULL, "%s", problem->text);
    ck_assert_msg(ends_with(problem->text, "."), "%s", problem->text);
    if (problem->status == MUSLIN_ERR_CHOICE)
        ck_assert_msg(ends_with(problem->text, last), "%s", problem->text);
    if (problem->status == MUSLIN_ERR_METHOD)
        ck_assert_msg(ends_with(problem->text, muslin_status_sentence(MUSLIN_ERR_METHOD)), "%s", problem->text);
}

static inline int has_no_limit(muslin_status status)
{
    return status == MUSLIN_ERR_STRUCT_TAIL || status == MUSLIN_ERR_METHOD || status == MUSLIN_ERR_FOREIGN;
}

/* It gives its status, names argument, value and `at`, and leaves the output alone. */
static inline void ck_refusal(const struct ruled *ruled, const struct refusal *refusal, int64_t at)
{
    union roomy spec;
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out(&spec, ruled->spec, ruled->spec_size);
    set_member(&spec, refusal);
    lay_out_output(&out, ruled->out_size);
    ck_status(ruled->call(&spec, &out, &problem), refusal->status);
    ck_assert_int_eq(problem.status, refusal->status);
    ck_assert_msg(problem.argument == refusal->argument, "member at %zu: %s", refusal->offset, problem.text);
    ck_assert_int_eq(problem.value, refusal->value);
    ck_assert_msg(!refusal->is_limited || problem.limit == refusal->limit, "member at %zu: %s", refusal->offset,
                  problem.text);
    if (has_no_limit(refusal->status))
        ck_assert_int_eq(problem.limit, 0);
    ck_sentence(&problem);
    ck_assert_msg(problem.at == at, "member at %zu: at %lld, not %lld", refusal->offset, (long long)problem.at,
                  (long long)at);
    ck_assert_uint_eq(out.head[0], ruled->out_size);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
}

/* Members that share an argument are told apart by problem.at, which counts them from 0; flags and pads are of the
 * spec, which is one. */
static inline void ck_refusals(const struct ruled *ruled, const struct refusal *refusals, size_t count)
{
    for (size_t i = 0; i < count; i++)
        ck_refusal(ruled, &refusals[i],
                   refusals[i].argument == MUSLIN_ARG_SPEC ? 0 : rank_of(refusals, count, &refusals[i]));
}

/* Members of one row, or such as are not told apart: problem.at is the same for all. */
static inline void ck_refusals_at(const struct ruled *ruled, int64_t at, const struct refusal *refusals, size_t count)
{
    for (size_t i = 0; i < count; i++)
        ck_refusal(ruled, &refusals[i], at);
}

#endif
