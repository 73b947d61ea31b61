/* struct_rules.h - the rules of base.h for sized structs, tried on one call after the other.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_STRUCT_RULES_H
#define MUSLIN_STRUCT_RULES_H

#include "testing.h"

#include <stddef.h>

enum { ROOM = 4200, SPARE = 24, FILL = 0xA5 };

/* A struct with room behind it, aligned as any struct. */
union roomy {
    uint32_t head[2]; /* size, flags */
    int64_t align;
    unsigned char bytes[ROOM];
};

static inline void lay_out(union roomy *roomy, const void *from, uint32_t size)
{
    memset(roomy->bytes, 0, sizeof roomy->bytes);
    memcpy(roomy->bytes, from, size);
}

static inline void lay_out_output(union roomy *roomy, uint32_t size)
{
    memset(roomy->bytes, FILL, sizeof roomy->bytes);
    roomy->head[0] = size;
}

/* Whether every byte behind `size` still is as it was laid out. */
static inline int is_untouched_from(const union roomy *roomy, uint32_t first)
{
    for (uint32_t i = first; i < ROOM; i++)
        if (roomy->bytes[i] != FILL)
            return 0;
    return 1;
}

/* A call that reads one spec and writes one output; either may be missing from it, and then is not tried. */
typedef muslin_status ruled_call(const void *spec, void *out, struct muslin_problem *problem);

struct ruled {
    ruled_call *call;
    const void *spec; /* a good one */
    uint32_t spec_size;
    uint32_t out_size;
    uint32_t out_least; /* its size in 1.0, of an output that has grown since */
    int64_t spec_at;    /* problem.at of what is wrong in the spec: 0, but of the second of two */
};

#define RULED(call, spec, out) \
    { call, &(spec), (uint32_t)sizeof(spec), (uint32_t)sizeof(struct out), (uint32_t)sizeof(struct out), 0 }
#define RULED_SECOND(call, spec, out) \
    { call, &(spec), (uint32_t)sizeof(spec), (uint32_t)sizeof(struct out), (uint32_t)sizeof(struct out), 1 }
/* `first` is the first member that came after 1.0. */
#define RULED_GROWN(call, spec, out, first) \
    { call, &(spec), (uint32_t)sizeof(spec), (uint32_t)sizeof(struct out), (uint32_t)offsetof(struct out, first), 0 }

/* What base.h promises of a problem with a struct as a whole: no row or byte, and where there is a bound, that one. */
static inline void ck_says_what_it_is(const struct muslin_problem *problem, const struct ruled *r, const void *spec,
                                      uint32_t out_size)
{
    const int is_spec = problem->argument != MUSLIN_ARG_OUTPUT;
    const uint32_t least = is_spec ? r->spec_size : r->out_least;
    ck_assert_int_eq(problem->at, is_spec ? r->spec_at : 0);
    ck_assert_int_eq(problem->bytes, 0);
    if (problem->status == MUSLIN_ERR_NULL) {
        ck_assert_int_eq(problem->value, 0);
        ck_assert_int_eq(problem->limit, 0);
    }
    if (problem->status == MUSLIN_ERR_STRUCT_SIZE) {
        uint32_t size = out_size;
        if (is_spec)
            memcpy(&size, spec, sizeof size);
        ck_assert_int_eq(problem->value, size);
        ck_assert_int_eq(problem->limit, size < least ? least : 4096);
    }
}

static inline void ck_refused(const struct ruled *r, const void *spec, uint32_t out_size, muslin_status status)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, out_size);
    ck_status(r->call(spec, &out, &problem), status);
    ck_assert_int_eq(problem.status, status);
    ck_says_what_it_is(&problem, r, spec, out_size);
    ck_assert_uint_eq(out.head[0], out_size);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    ck_status(r->call(spec, &out, NULL), status);
}

static inline void ck_spec_rules(const struct ruled *r)
{
    union roomy spec;
    ck_refused(r, NULL, r->out_size, MUSLIN_ERR_NULL);
    lay_out(&spec, r->spec, r->spec_size);
    const uint32_t wrong[] = { 0, r->spec_size - 1, 4097, UINT32_MAX };
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        spec.head[0] = wrong[i];
        ck_refused(r, &spec, r->out_size, MUSLIN_ERR_STRUCT_SIZE);
    }
    spec.head[0] = 4096;
    spec.bytes[4095] = 1;
    ck_refused(r, &spec, r->out_size, MUSLIN_ERR_STRUCT_TAIL);
    spec.bytes[4095] = 0;
    spec.bytes[r->spec_size] = 1;
    ck_refused(r, &spec, r->out_size, MUSLIN_ERR_STRUCT_TAIL);
    spec.head[0] = r->spec_size;
    spec.bytes[r->spec_size] = 0;
    spec.head[1] |= UINT32_C(1) << 31;
    ck_refused(r, &spec, r->out_size, MUSLIN_ERR_FLAGS);
}

/* For a spec whose flags must be 0 in this version: no bit of them is known, and the problem names the spec. */
static inline void ck_no_flag_known(const struct ruled *r)
{
    union roomy spec;
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out(&spec, r->spec, r->spec_size);
    for (uint32_t bit = 0; bit < 32; bit++) {
        spec.head[1] = UINT32_C(1) << bit;
        ck_refused(r, &spec, r->out_size, MUSLIN_ERR_FLAGS);
    }
    lay_out_output(&out, r->out_size);
    ck_status(r->call(&spec, &out, &problem), MUSLIN_ERR_FLAGS);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SPEC);
}

/* Outputs of callers who know fewer members, or only a part of one: as much of the whole as they have room for. */
static inline void ck_older_outputs(const struct ruled *r)
{
    union roomy whole;
    union roomy older;
    lay_out_output(&whole, r->out_size);
    ck_ok(r->call(r->spec, &whole, NULL));
    for (uint32_t size = r->out_least; size < r->out_size; size++) {
        lay_out_output(&older, size);
        ck_ok(r->call(r->spec, &older, NULL));
        ck_assert_uint_eq(older.head[0], size);
        ck_assert_int_eq(memcmp(older.bytes + 4, whole.bytes + 4, size - 4), 0);
        ck_assert(is_untouched_from(&older, size));
    }
}

static inline void ck_out_rules(const struct ruled *r)
{
    const uint32_t wrong[] = { 0, r->out_least - 1, 4097, UINT32_MAX };
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++)
        ck_refused(r, r->spec, wrong[i], MUSLIN_ERR_STRUCT_SIZE);
    ck_older_outputs(r);
    struct muslin_problem problem = PROBLEM;
    ck_status(r->call(r->spec, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_says_what_it_is(&problem, r, r->spec, r->out_size);
}

/* Newer structs than the library knows: a zero tail is read, an output's tail is zeroed. */
static inline void ck_newer_structs(const struct ruled *r)
{
    union roomy spec;
    union roomy plain;
    union roomy larger;
    lay_out(&spec, r->spec, r->spec_size);
    lay_out_output(&plain, r->out_size);
    lay_out_output(&larger, r->out_size + SPARE);
    ck_ok(r->call(&spec, &plain, NULL));
    ck_assert_uint_eq(plain.head[0], r->out_size);
    ck_assert_uint_eq(plain.head[1], 0);
    ck_assert(is_untouched_from(&plain, r->out_size));
    spec.head[0] = r->spec_size + SPARE;
    ck_ok(r->call(&spec, &larger, NULL));
    ck_assert_uint_eq(larger.head[0], r->out_size + SPARE);
    ck_assert_int_eq(memcmp(plain.bytes + 4, larger.bytes + 4, r->out_size - 4), 0);
    for (uint32_t i = r->out_size; i < r->out_size + SPARE; i++)
        ck_assert_uint_eq(larger.bytes[i], 0);
    ck_assert(is_untouched_from(&larger, r->out_size + SPARE));
}

static inline void ck_problem_rules(const struct ruled *r)
{
    struct muslin_problem untouched = PROBLEM;
    struct muslin_problem problem;
    union roomy out;
    lay_out_output(&out, r->out_size);
    memset(&untouched, FILL, sizeof untouched);
    untouched.size = (uint32_t)sizeof untouched;
    problem = untouched;
    ck_ok(r->call(r->spec, &out, &problem));
    ck_assert_int_eq(memcmp(&problem, &untouched, sizeof problem), 0);
    lay_out_output(&out, r->out_size);
    problem.size = 8;
    ck_status(r->call(r->spec, &out, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
}

static inline void ck_struct_rules(const struct ruled *r)
{
    ck_spec_rules(r);
    ck_out_rules(r);
    ck_newer_structs(r);
    ck_problem_rules(r);
}

/* An ..._init call against the ..._INIT value of the same struct. */
typedef muslin_status init_call(void *spec, uint32_t size);

#define INIT_CALL(of)                                         \
    static muslin_status init_##of(void *spec, uint32_t size) \
    {                                                         \
        return muslin_##of##_spec_init(spec, size);           \
    }

/* The same of a row that is asked with and answered, and of the problem. */
#define ROW_INIT_CALL(of)                                    \
    static muslin_status init_##of(void *row, uint32_t size) \
    {                                                        \
        return muslin_##of##_init(row, size);                \
    }

static inline void ck_init_rules(init_call *init, const void *initial, uint32_t known)
{
    union roomy spec;
    ck_status(init(NULL, known), MUSLIN_ERR_NULL);
    const uint32_t wrong[] = { 0, known - 1, 4097 };
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        memset(spec.bytes, FILL, sizeof spec.bytes);
        ck_status(init(&spec, wrong[i]), MUSLIN_ERR_STRUCT_SIZE);
        ck_assert(is_untouched_from(&spec, 0));
    }
    ck_ok(init(&spec, known));
    ck_assert_int_eq(memcmp(spec.bytes, initial, known), 0);
    ck_assert(is_untouched_from(&spec, known));
    ck_ok(init(&spec, known + SPARE));
    ck_assert_uint_eq(spec.head[0], known + SPARE);
    ck_assert_int_eq(memcmp(spec.bytes + 4, (const unsigned char *)initial + 4, known - 4), 0);
    for (uint32_t i = known; i < known + SPARE; i++)
        ck_assert_uint_eq(spec.bytes[i], 0);
}

/* Numbers that only look random: the same on every run and target (Steele, Lea, Flood 2014, splitmix64). */
static inline uint64_t draw(uint64_t *state)
{
    *state += UINT64_C(0x9E3779B97F4A7C15);
    uint64_t z = *state;
    z = (z ^ (z >> 30)) * UINT64_C(0xBF58476D1CE4E5B9);
    z = (z ^ (z >> 27)) * UINT64_C(0x94D049BB133111EB);
    return z ^ (z >> 31);
}

/* From first to last. */
static inline int64_t draw_from(uint64_t *state, int64_t first, int64_t last)
{
    return first + (int64_t)(draw(state) % (uint64_t)(last - first + 1));
}

#endif
