/* calls.c - how long one call of the arithmetic takes beside what it is compared with. Built twice: with the shared
 * library, and with LINKED from the library's sources, optimized as one program, so that its calls may be inlined: then
 * it compares only with what is inlined too.
 *
 *     calls ROUNDS                     a line of JSON for each pair, times in nanoseconds, the best of five runs
 *     calls ROUNDS NAME ours|other     runs one of them and prints nothing: for counting instructions
 *
 * Each pair does the same work on the same values: what is compared with is not always as careful, and says so.
 *
 * SPDX-License-Identifier: MIT */
#include "../measure.h"

#include "plain.h"

#include <muslin/muslin.h>

#include <inttypes.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#ifndef LINKED
#define LINKED 0
#endif

enum { VALUES = 1024, TEXT = 24, RUNS = 5 };

/* What all of it works on: lengths below 100 in, in 64ths, and their texts as inches with decimals and fractions, as
 * inches with their unit, and as centimetres. */
struct values {
    muslin_len lengths[VALUES];
    char decimals[VALUES][TEXT];
    char fractions[VALUES][TEXT];
    char inches[VALUES][TEXT];
    char centimetres[VALUES][TEXT];
    double doubles[VALUES];
    int64_t sink; /* what keeps the work from being left out */
};

static struct values values;
static const struct muslin_seam_spec quarter_inch = MUSLIN_SEAM_SPEC_INIT;
static const struct plain_seam plain_quarter_inch = { 2032, 0 };
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
        snprintf(values.inches[i], TEXT, "%d %d/64 in", sixty_fourths / 64, sixty_fourths % 64);
        snprintf(values.centimetres[i], TEXT, "%.2f cm", sixty_fourths * 2.54 / 64);
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

WORK(add_plain)
{
    int64_t sum = 0;
    return plain_add(values.lengths[i], 2032, &sum) + sum;
}

/* The same range checks and the same sum. */
WORK(add_inlined)
{
    const int64_t a = values.lengths[i], most = MUSLIN_LENGTH_MAX;
    return a < -most || a > most || a + 2032 > most ? -1 : a + 2032;
}

WORK(cut_size)
{
    muslin_len cut = 0;
    return muslin_seam_cut_from_finished(values.lengths[i], &quarter_inch, &cut, NULL) + cut;
}

WORK(cut_size_plain)
{
    int64_t cut = 0;
    return plain_cut_size(values.lengths[i], &plain_quarter_inch, &cut, NULL) + cut;
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

static int64_t parsed_of(const char *text)
{
    struct muslin_parsed parsed = { .size = sizeof parsed };
    return muslin_length_parse(text, strlen(text), NULL, &parsed, NULL) + parsed.value;
}

WORK(parse_decimal)
{
    return parsed_of(values.decimals[i]);
}

WORK(parse_strtod)
{
    return (int64_t)(strtod(values.decimals[i], NULL) * 8128);
}

WORK(parse_fraction)
{
    return parsed_of(values.fractions[i]);
}

WORK(parse_sscanf)
{
    int whole = 0, above = 0, below = 1;
    return sscanf(values.fractions[i], "%d %d/%d", &whole, &above, &below) + whole * 8128 + above * 8128 / below;
}

WORK(parse_inches)
{
    return parsed_of(values.inches[i]);
}

WORK(parse_inches_sscanf)
{
    char unit[8] = "";
    int whole = 0, above = 0, below = 1;
    sscanf(values.inches[i], "%d %d/%d %7s", &whole, &above, &below, unit);
    return strcmp(unit, "in") == 0 ? whole * 8128 + above * 8128 / below : -1;
}

WORK(parse_centimetres)
{
    return parsed_of(values.centimetres[i]);
}

WORK(parse_centimetres_strtod)
{
    char *unit;
    const double number = strtod(values.centimetres[i], &unit);
    return strcmp(unit, " cm") == 0 ? (int64_t)(number * 3200) : -1;
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

static const struct muslin_format_spec centimetres = { sizeof centimetres, 0, MUSLIN_STYLE_CM, 64, 2, '.',
                                                       MUSLIN_DIRECTION_NEAREST, 0 };

WORK(format_centimetres)
{
    char text[64];
    return muslin_length_format(values.lengths[i], &centimetres, text, sizeof text, NULL, NULL, NULL) + text[0];
}

WORK(format_centimetres_snprintf)
{
    char text[64];
    return snprintf(text, sizeof text, "%.2f cm", values.doubles[i] * 2.54) + text[0];
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
    { "add", add, "a checked add in a shared library", add_plain, 1.2 },
    { "add_inlined", add, "the same checks by hand, inlined", add_inlined, LINKED ? 1.2 : 0 },
    { "cut_size", cut_size, "a checked add in a shared library", cut_size_plain, 1.2 },
    { "cut_size_inlined", cut_size, "the same checks by hand, inlined", cut_size_inlined, LINKED ? 1.2 : 0 },
    { "parse_decimal", parse_decimal, "strtod", parse_strtod, 0.25 },
    { "parse_fraction", parse_fraction, "sscanf of whole numbers", parse_sscanf, 0.25 },
    { "parse_inches", parse_inches, "sscanf of whole numbers and a word", parse_inches_sscanf, 0.25 },
    { "parse_centimetres", parse_centimetres, "strtod and a strcmp", parse_centimetres_strtod, 0.25 },
    { "format_fraction", format_fraction, "snprintf of a double with four places", format_snprintf, 0.2 },
    { "format_centimetres", format_centimetres, "snprintf of a double with two places", format_centimetres_snprintf,
      0.2 },
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
    if (LINKED && strstr(pair->name, "_inlined") == NULL)
        return;
    const double ours = best_of(pair->ours, rounds), other = best_of(pair->other, rounds);
    printf("{\"name\": \"%s%s\", \"to\": \"%s\", \"nanoseconds\": %.1f, \"other_nanoseconds\": %.1f, "
           "\"ratio\": %.3f, \"aim\": %g}\n",
           pair->name, LINKED ? "_linked" : "", pair->to, ours, other, ours / other, pair->aim);
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
