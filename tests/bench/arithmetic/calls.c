/* calls.c - how long one call of the arithmetic takes, through the shared library, beside what it is compared with.
 *
 *     calls ROUNDS                     a line of JSON for each pair, times in nanoseconds, the best of five runs
 *     calls ROUNDS NAME ours|other     runs one of them and prints nothing: for counting instructions
 *
 * Each pair does the same work on the same values: what is compared with is not always as careful, and says so.
 *
 * SPDX-License-Identifier: MIT */
#include "../measure.h"

#include <muslin/muslin.h>

#include <inttypes.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { VALUES = 1024, TEXT = 24, RUNS = 5 };

/* What all of it works on: lengths below 100 in, in 64ths, and their texts as inches with decimals and fractions. */
struct values {
    muslin_len lengths[VALUES];
    char decimals[VALUES][TEXT];
    char fractions[VALUES][TEXT];
    double doubles[VALUES];
    int64_t sink; /* what keeps the work from being left out */
};

static struct values values;
static const struct muslin_seam_spec quarter_inch = MUSLIN_SEAM_SPEC_INIT;
static const struct muslin_rounding_spec eighths = { sizeof eighths, 0, 1016, 0, MUSLIN_DIRECTION_UP, 0 };

static void fill(void)
{
    uint32_t state = 1;
    for (int i = 0; i < VALUES; i++) {
        state = state * 1664525u + 1013904223u;
        const int sixty_fourths = (int)(state >> 8) % 6400 + 1;
        values.lengths[i] = sixty_fourths * INT64_C(127);
        values.doubles[i] = sixty_fourths / 64.0;
        snprintf(values.decimals[i], TEXT, "%.4f", sixty_fourths / 64.0);
        snprintf(values.fractions[i], TEXT, "%d %d/64", sixty_fourths / 64, sixty_fourths % 64);
    }
}

/* ---- the calls, and what they are compared with ----------------------------------------------------------------- */

typedef int64_t work(int i);

/* Nothing is inlined into the loop, so that each pays for one call. */
#define WORK(name) static __attribute__((noinline)) int64_t name(int i)

WORK(add)
{
    muslin_len sum = 0;
    return muslin_length_add(values.lengths[i], 2032, &sum) + sum;
}

WORK(add_raw)
{
    return values.lengths[i] + 2032;
}

WORK(cut_size)
{
    muslin_len cut = 0;
    return muslin_seam_cut_from_finished(values.lengths[i], &quarter_inch, &cut, NULL) + cut;
}

/* The same range checks and the same sum, without a spec, a problem or a library. */
WORK(cut_size_inlined)
{
    const int64_t finished = values.lengths[i], more = 2 * quarter_inch.allowance + quarter_inch.take_up;
    int64_t cut;
    if (finished < 0 || finished > MUSLIN_SIZE_MAX || more < 0 || more > 3 * MUSLIN_SIZE_MAX ||
        __builtin_add_overflow(finished, more, &cut) || cut > MUSLIN_LENGTH_MAX)
        return -1;
    return cut;
}

WORK(parse_decimal)
{
    struct muslin_parsed parsed = { .size = sizeof parsed };
    return muslin_length_parse(values.decimals[i], strlen(values.decimals[i]), NULL, &parsed, NULL) + parsed.value;
}

WORK(parse_strtod)
{
    return (int64_t)(strtod(values.decimals[i], NULL) * 8128);
}

WORK(parse_fraction)
{
    struct muslin_parsed parsed = { .size = sizeof parsed };
    return muslin_length_parse(values.fractions[i], strlen(values.fractions[i]), NULL, &parsed, NULL) + parsed.value;
}

WORK(parse_sscanf)
{
    int whole = 0, above = 0, below = 1;
    return sscanf(values.fractions[i], "%d %d/%d", &whole, &above, &below) + whole * 8128 + above * 8128 / below;
}

WORK(format_fraction)
{
    char text[64];
    return muslin_length_format(values.lengths[i], NULL, text, sizeof text, NULL, NULL, NULL) + text[0];
}

WORK(format_snprintf)
{
    char text[64];
    return snprintf(text, sizeof text, "%.4f in", values.doubles[i]) + text[0];
}

WORK(diagonal)
{
    struct muslin_rounded rounded = { .size = sizeof rounded };
    return muslin_length_times_root2(values.lengths[i], &eighths, &rounded) + rounded.value;
}

WORK(diagonal_libm)
{
    return (int64_t)(ceil(values.doubles[i] * sqrt(2.0) * 8) * 1016);
}

/* 64 elements a call, of the values that follow; nothing is checked in the plain loops. */
enum { ELEMENTS = 64 };
static muslin_len elements[ELEMENTS];

static const muslin_len *elements_from(int i)
{
    return values.lengths + (i < VALUES - ELEMENTS ? i : 0);
}

WORK(add_n)
{
    const muslin_len *from = elements_from(i);
    return muslin_length_add_n(from, values.lengths, ELEMENTS, elements, NULL, NULL) + elements[0];
}

WORK(add_n_loop)
{
    const muslin_len *from = elements_from(i);
    for (int k = 0; k < ELEMENTS; k++)
        elements[k] = from[k] + values.lengths[k];
    return elements[0];
}

WORK(cut_size_n)
{
    const muslin_len *from = elements_from(i);
    return muslin_seam_cut_from_finished_n(from, ELEMENTS, &quarter_inch, elements, NULL, NULL) + elements[0];
}

WORK(cut_size_n_loop)
{
    const muslin_len *from = elements_from(i);
    for (int k = 0; k < ELEMENTS; k++)
        elements[k] = from[k] + 4064;
    return elements[0];
}

static const struct pair {
    const char *name;
    work *ours;
    const char *to;
    work *other;
    double aim; /* the ratio that is aimed at, 0 for none */
} pairs[] = {
    { "add", add, "a raw add of 64-bit numbers", add_raw, 0 },
    { "cut_size", cut_size, "an add checked by hand, inlined", cut_size_inlined, 1.2 },
    { "parse_decimal", parse_decimal, "strtod", parse_strtod, 0.25 },
    { "parse_fraction", parse_fraction, "sscanf of whole numbers", parse_sscanf, 0.25 },
    { "format_fraction", format_fraction, "snprintf of a double with four places", format_snprintf, 0.2 },
    { "diagonal", diagonal, "ceil(x sqrt 2) in floating point, not always right", diagonal_libm, 0 },
    { "add_n", add_n, "64 adds in a plain loop", add_n_loop, 1.5 },
    { "cut_size_n", cut_size_n, "64 adds of a number in a plain loop", cut_size_n_loop, 1.5 },
};
enum { PAIRS = sizeof pairs / sizeof pairs[0] };

static void repeat(work *one, long rounds)
{
    int64_t sum = 0;
    for (long round = 0; round < rounds; round++)
        for (int i = 0; i < VALUES; i++)
            sum += one(i);
    values.sink += sum;
}

/* Nanoseconds a call. */
static double best_of(work *one, long rounds)
{
    double best = 0;
    for (int run = 0; run < RUNS; run++) {
        const double begin = now();
        repeat(one, rounds);
        const double took = (now() - begin) * 1e6 / (double)rounds / VALUES;
        if (run == 0 || took < best)
            best = took;
    }
    return best;
}

static void compare(const struct pair *pair, long rounds)
{
    const double ours = best_of(pair->ours, rounds), other = best_of(pair->other, rounds);
    printf("{\"name\": \"%s\", \"to\": \"%s\", \"nanoseconds\": %.1f, \"other_nanoseconds\": %.1f, "
           "\"ratio\": %.3f, \"aim\": %g}\n",
           pair->name, pair->to, ours, other, ours / other, pair->aim);
}

int main(int argc, char **argv)
{
    const long rounds = argc > 1 ? strtol(argv[1], NULL, 10) : 200;
    fill();
    for (int i = 0; i < PAIRS; i++) {
        if (argc < 3)
            compare(&pairs[i], rounds);
        else if (strcmp(argv[2], pairs[i].name) == 0)
            repeat(argc > 3 && strcmp(argv[3], "other") == 0 ? pairs[i].other : pairs[i].ours, rounds);
    }
    fprintf(stderr, "%" PRId64 "\n", values.sink);
    return 0;
}
