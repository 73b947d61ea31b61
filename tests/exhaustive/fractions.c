/* fractions.c - every fraction of an inch with a denominator up to 64, up to 100 in: read, written, and put on grids.
 *
 * SPDX-License-Identifier: MIT
 *
 *     fractions [INCHES, by default 100]
 *
 * What is right is worked out with whole numbers: a / b inches are 8128 a / b ticks, a tie goes up. Each length read is
 * written to every denominator up to 64, in each direction, and snapped to grids of every 1/64 in and to 1 and 2 mm. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <muslin/muslin.h>

enum { MOST = 64, INCH = 8128 };

static void wrong(const char *what, int64_t length, int64_t with)
{
    printf("%s: %lld ticks, %lld\n", what, (long long)length, (long long)with);
    exit(1);
}

/* a / b for a >= 0: up, down, or to the nearest, a tie going up. */
static int64_t divided(int64_t a, int64_t b, int32_t direction)
{
    switch (direction) {
    case MUSLIN_DIRECTION_UP:
        return a / b + (a % b != 0);
    case MUSLIN_DIRECTION_DOWN:
        return a / b;
    default:
        return (2 * a + b) / (2 * b);
    }
}

/* Whole inches and parts of one in lowest terms. */
static void put(char *text, size_t room, int64_t parts, int64_t denominator)
{
    const int64_t whole = parts / denominator;
    int64_t above = parts % denominator, below = denominator;
    for (int64_t of = below; of > 1; of--)
        while (above % of == 0 && below % of == 0 && above > 0) {
            above /= of;
            below /= of;
        }
    if (above == 0)
        snprintf(text, room, "%lld in", (long long)whole);
    else if (whole == 0)
        snprintf(text, room, "%lld/%lld in", (long long)above, (long long)below);
    else
        snprintf(text, room, "%lld %lld/%lld in", (long long)whole, (long long)above, (long long)below);
}

static void write_out(int64_t length, int32_t denominator, int32_t direction)
{
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    char expected[64], written[64];
    int32_t exact = -1;
    spec.denominator = denominator;
    spec.direction = direction;
    put(expected, sizeof expected, divided(length * denominator, INCH, direction), denominator);
    if (muslin_length_format(length, &spec, written, sizeof written, NULL, &exact, NULL) != MUSLIN_OK ||
        strcmp(written, expected) != 0 || exact != (length * denominator % INCH == 0))
        wrong("written otherwise", length, denominator);
}

static void snap(int64_t length, int64_t grid, int32_t direction)
{
    struct muslin_rounding_spec spec = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { .size = sizeof rounded };
    spec.grid = grid;
    spec.direction = direction;
    if (muslin_length_snap(length, &spec, &rounded) != MUSLIN_OK ||
        rounded.value != divided(length, grid, direction) * grid)
        wrong("on another place of the grid", length, grid);
}

static int64_t read_one(int64_t whole, int64_t above, int64_t below)
{
    char text[64];
    struct muslin_parsed parsed = { .size = sizeof parsed };
    snprintf(text, sizeof text, "%lld %lld/%lld", (long long)whole, (long long)above, (long long)below);
    const int64_t over = (whole * below + above) * INCH;
    if (muslin_length_parse(text, strlen(text), NULL, &parsed, NULL) != MUSLIN_OK ||
        parsed.value != divided(over, below, MUSLIN_DIRECTION_NEAREST) || parsed.exact != (over % below == 0))
        wrong("read otherwise", over / below, below);
    return parsed.value;
}

int main(int count, char **words)
{
    const int64_t inches = count == 2 ? atoll(words[1]) : 100;
    int64_t read = 0, written = 0, snapped = 0;
    for (int64_t whole = 0; whole < inches; whole++)
        for (int64_t below = 1; below <= MOST; below++)
            for (int64_t above = 0; above < below; above++) {
                const int64_t length = read_one(whole, above, below);
                read++;
                for (int32_t direction = MUSLIN_DIRECTION_UP; direction <= MUSLIN_DIRECTION_NEAREST; direction++) {
                    for (int32_t denominator = 1; denominator <= MOST; denominator++, written++)
                        write_out(length, denominator, direction);
                    for (int64_t grid = 127; grid <= INCH; grid += 127, snapped++)
                        snap(length, grid, direction);
                    snap(length, 320, direction);
                    snap(length, 640, direction);
                    snapped += 2;
                }
            }
    printf("%lld read, %lld written, %lld snapped\n", (long long)read, (long long)written, (long long)snapped);
    return 0;
}
