/* muslin/length.h - the number: its exact arithmetic, its rounding, its text forms.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every call
 *   Statuses    MUSLIN_ERR_NULL: an output is missing, or an array that is read. What else a call can return stands
 *               with it, or at the head of its section.
 *   Cost        Constant time unless its comment says otherwise. Nothing allocates, nothing is kept.
 */
#ifndef MUSLIN_LENGTH_H
#define MUSLIN_LENGTH_H

#include "base.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- exact arithmetic ------------------------------------------------------------------------------------------ */

/* Lengths here may be anything within +-MUSLIN_LENGTH_MAX. An input outside gives MUSLIN_ERR_RANGE, a result outside
 * MUSLIN_ERR_OVERFLOW, a null output MUSLIN_ERR_NULL; the output is then untouched. */

/* a + b. Example: 2 1/2 in + 1/4 in: muslin_length_add(20320, 2032, &sum) gives 22352. Since 1.0. */
MUSLIN_API muslin_status muslin_length_add(muslin_len a, muslin_len b, muslin_len *out);

/* a - b, which may be negative. Example: muslin_length_subtract(20320, 4064, &rest), 2 1/2 in less 1/2 in, gives 16256.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_length_subtract(muslin_len a, muslin_len b, muslin_len *out);

/* a x factor, factor any int64_t. Example: 7 strips of 2 1/2 in laid side by side: muslin_length_multiply(20320, 7,
 * &width) gives 142240, 17 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_length_multiply(muslin_len a, int64_t factor, muslin_len *out);

/* How a result that need not lie on the grid is brought there. */
enum muslin_direction {
    MUSLIN_DIRECTION_UP = 1,     /* towards +infinity */
    MUSLIN_DIRECTION_DOWN = 2,   /* towards -infinity */
    MUSLIN_DIRECTION_NEAREST = 3 /* to the nearest; ties upwards */
};

/* The rounding a caller asks for. Grid is the step in ticks (1016 for 1/8 in), 1 .. MUSLIN_SIZE_MAX. Tolerance,
 * 0 .. grid - 1, is what may be overlooked when rounding up or down: with direction up the result is the least grid
 * point not below the exact value less the tolerance, with down the greatest not above it plus the tolerance. It has
 * no effect on nearest. It keeps 23.8774 in from becoming 24 for two thousandths of an inch. */
struct muslin_rounding_spec {
    uint32_t size;
    uint32_t flags;    /* 0 */
    muslin_len grid;   /* in ticks, 1 .. MUSLIN_SIZE_MAX */
    muslin_len tolerance; /* 0 .. grid - 1 */
    int32_t direction; /* enum muslin_direction */
    int32_t pad;       /* 0 */
};
/* To the nearest tick. */
#define MUSLIN_ROUNDING_SPEC_INIT { sizeof(struct muslin_rounding_spec), 0, 1, 0, 3, 0 }

/* Writes MUSLIN_ROUNDING_SPEC_INIT's values to the first `size` bytes of *spec. MUSLIN_ERR_NULL, or
 * MUSLIN_ERR_STRUCT_SIZE as for every struct. Example: muslin_rounding_spec_init(&rounding, sizeof rounding).
 * Since 1.0. */
MUSLIN_API muslin_status muslin_rounding_spec_init(struct muslin_rounding_spec *spec, uint32_t size);

/* A rounded result. The error value - exact lies in [error, error + 1) ticks; when `exact` is 1 it is exactly `error`
 * and that is 0 too. `on_tick` is 1 when the exact value is a whole number of ticks, so that `error` is exact. */
struct muslin_rounded {
    uint32_t size;
    uint32_t flags;
    muslin_len value;  /* the grid point */
    muslin_len error;  /* value - exact value, rounded down to a tick */
    int32_t exact;     /* 1 when nothing was lost by rounding */
    int32_t on_tick;   /* 1 when the unrounded value is a whole number of ticks */
};

/* a / divisor, rounded as asked. divisor any int64_t but 0 (MUSLIN_ERR_DIVIDE_BY_ZERO). Statuses of the rounding, here
 * and wherever one is given: MUSLIN_ERR_NULL, MUSLIN_ERR_RANGE (grid, tolerance), MUSLIN_ERR_CHOICE (direction), the
 * struct statuses. MUSLIN_ERR_OVERFLOW when the grid point lies beyond MUSLIN_LENGTH_MAX. Example: 10 in over 3, down
 * to 1/8 in: muslin_length_divide(81280, 3, &down_to_eighths, &part) gives 26416, 3 1/4 in, with part.error -678.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_length_divide(muslin_len a, int64_t divisor,
                                              const struct muslin_rounding_spec *rounding,
                                              struct muslin_rounded *out);

/* a x numerator / denominator, rounded once, as asked; the product is never cut short on the way. numerator any
 * int64_t, denominator > 0 (0: MUSLIN_ERR_DIVIDE_BY_ZERO, negative: MUSLIN_ERR_RANGE). Other statuses as for a
 * quotient. Example: 4 in x 3 / 2 to the nearest tick gives 48768, 6 in. Since 1.0. */
MUSLIN_API muslin_status muslin_length_scale(muslin_len a, int64_t numerator, int64_t denominator,
                                             const struct muslin_rounding_spec *rounding, struct muslin_rounded *out);

/* a brought to the grid. Statuses as for a quotient. Example: 3.05 in up to 1/8 in is 3 1/8 in. Since 1.0. */
MUSLIN_API muslin_status muslin_length_snap(muslin_len a, const struct muslin_rounding_spec *rounding,
                                            struct muslin_rounded *out);

/* -1, 0 or 1 as a is less than, equal to or greater than b. For all int64_t. Example: muslin_length_compare(1, 2) gives
 * -1. Since 1.0. */
MUSLIN_API int32_t muslin_length_compare(muslin_len a, muslin_len b);

/* The sum of n lengths; the status does not depend on their order, because partial sums may pass the range, and any
 * length out of range gives MUSLIN_ERR_RANGE before MUSLIN_ERR_OVERFLOW is considered. n = 0 gives 0 (values may then
 * be null). O(n). Example: the three borders { 8128, 16256, 24384 } sum to 48768, 6 in. Since 1.0. */
MUSLIN_API muslin_status muslin_length_sum(const muslin_len *values, size_t n, muslin_len *out);

/* The sum of lengths[i] x counts[i]; order-independent as above. counts any int64_t. O(n). Example: lengths
 * { 8128, 4064 } with counts { 2, 3 } give 28448, 3 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_length_dot(const muslin_len *lengths, const int64_t *counts, size_t n, muslin_len *out);

/* ---- array forms ----------------------------------------------------------------------------------------------- */

/* One call for n values. With `statuses` (n of them), each element gets its own status, failed elements of `out` are
 * untouched, and the call returns MUSLIN_OK. Without (null), the call stops at the first failing element, returns its
 * status and writes its index to *failed if that is given; earlier results stand. `out` may be an input exactly; no
 * other overlap. n = 0 succeeds, with null arrays too. What is wrong for all elements (a null array, the rounding, the
 * denominator) is returned with statuses as without, before anything is written; *failed is untouched then, and at
 * success. O(n). Example: muslin_length_add_n(cut, seams, 1000000, cut, NULL, NULL). Since 1.0. */
MUSLIN_API muslin_status muslin_length_add_n(const muslin_len *a, const muslin_len *b, size_t n, muslin_len *out,
                                             muslin_status *statuses, size_t *failed);
MUSLIN_API muslin_status muslin_length_subtract_n(const muslin_len *a, const muslin_len *b, size_t n, muslin_len *out,
                                                  muslin_status *statuses, size_t *failed);
MUSLIN_API muslin_status muslin_length_multiply_n(const muslin_len *a, const int64_t *factors, size_t n,
                                                  muslin_len *out, muslin_status *statuses, size_t *failed);
/* a[i] x numerator / denominator, each rounded as asked. Example: { 8128, 16256, 24384 } x 3 / 2 are { 12192, 24384,
 * 36576 }. Since 1.0. */
MUSLIN_API muslin_status muslin_length_scale_n(const muslin_len *a, size_t n, int64_t numerator, int64_t denominator,
                                               const struct muslin_rounding_spec *rounding, muslin_len *out,
                                               muslin_status *statuses, size_t *failed);
/* a[i], each brought to the grid. Example: { 7700, 8128, 8600 } to the nearest 1/8 in are 1 in each.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_length_snap_n(const muslin_len *a, size_t n,
                                              const struct muslin_rounding_spec *rounding, muslin_len *out,
                                              muslin_status *statuses, size_t *failed);

/* ---- irrational sizes ------------------------------------------------------------------------------------------ */

/* Each is found by exact integer comparison and rounded once, in the caller's direction: the result is the correctly
 * rounded one. Inputs are 0 .. MUSLIN_SIZE_MAX (MUSLIN_ERR_RANGE); the other statuses are those of the rounding and of
 * structs. Source: geometry. Constant time. */

/* a x sqrt 2, the diagonal of a square. Example: a = 48768 (6 in), up to 1/8 in: 8 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_length_times_root2(muslin_len a, const struct muslin_rounding_spec *rounding,
                                                   struct muslin_rounded *out);
/* a / sqrt 2, the side of a square with diagonal a. Example: 12 in to the nearest 1/8 in is 8 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_length_over_root2(muslin_len a, const struct muslin_rounding_spec *rounding,
                                                  struct muslin_rounded *out);
/* a x sqrt 3 / 2, the height of an equilateral triangle with side a. Example: 4 in to the nearest 1/8 in is 3 1/2 in.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_length_equilateral_height(muslin_len a, const struct muslin_rounding_spec *rounding,
                                                          struct muslin_rounded *out);
/* 2 a / sqrt 3, the side of an equilateral triangle with height a. Example: 6 in up to 1/8 in is 7 in. Since 1.0. */
MUSLIN_API muslin_status muslin_length_equilateral_side(muslin_len a, const struct muslin_rounding_spec *rounding,
                                                        struct muslin_rounded *out);
/* sqrt(a x a + b x b). Example: 3 in and 4 in give 5 in, exact. Since 1.0. */
MUSLIN_API muslin_status muslin_length_hypotenuse(muslin_len a, muslin_len b,
                                                  const struct muslin_rounding_spec *rounding,
                                                  struct muslin_rounded *out);
/* The side of the square that has this area, in doubled square ticks (2 x width x height), 0 .. 2^61. Example: the area
 * of 4 in x 9 in, 2 x 32512 x 73152, gives 48768, 6 in, exact. Since 1.0. */
MUSLIN_API muslin_status muslin_length_root_of_area(int64_t area, const struct muslin_rounding_spec *rounding,
                                                    struct muslin_rounded *out);

/* ---- text in --------------------------------------------------------------------------------------------------- */

enum muslin_length_unit {
    MUSLIN_LENGTH_UNIT_INCH = 1,
    MUSLIN_LENGTH_UNIT_FOOT = 2,
    MUSLIN_LENGTH_UNIT_YARD = 3,
    MUSLIN_LENGTH_UNIT_MM = 4,
    MUSLIN_LENGTH_UNIT_CM = 5,
    MUSLIN_LENGTH_UNIT_M = 6
};

/* The length of one unit in ticks (exact for all six); 0 for anything else. Source: NIST Handbook 44, Appendix C.
 * Example: muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_YARD) gives 292608. Since 1.0. */
MUSLIN_API muslin_len muslin_length_unit_ticks(int32_t unit);

/* The unit's usual short word: "in", "ft", "yd", "mm", "cm", "m"; "" for anything else. Never null. Example:
 * muslin_length_unit_word(MUSLIN_LENGTH_UNIT_CM) gives "cm". Since 1.0. */
MUSLIN_API const char *muslin_length_unit_word(int32_t unit);

struct muslin_parse_spec {
    uint32_t size;
    uint32_t flags;        /* 0 */
    int32_t default_unit;  /* enum muslin_length_unit, for a number that names none */
    int32_t decimal_sign;  /* '.' or ',' */
};
/* Inches and a decimal point. */
#define MUSLIN_PARSE_SPEC_INIT { sizeof(struct muslin_parse_spec), 0, 1, 46 }

/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_parse_spec_init(&reading, sizeof reading). Since 1.0. */
MUSLIN_API muslin_status muslin_parse_spec_init(struct muslin_parse_spec *spec, uint32_t size);

struct muslin_parsed {
    uint32_t size;
    uint32_t flags;
    muslin_len value; /* the length */
    int32_t exact; /* 1 when the text lies on the tick grid; else value is the nearest tick, ties upwards */
    int32_t unit;  /* enum muslin_length_unit: of the last part, named or the default */
};

/* Reads one length from `bytes` bytes of UTF-8 text, which need not be terminated.
 *
 * Grammar:  [sign] part { part }, with blanks around and between. A part is a number and, except for a last or only
 *           part, a unit; units of several parts go from larger to smaller ("1 yd 4 1/2 in", "5' 6\""), and the sign
 *           holds for the whole. A number without a unit takes the default one, and must be in its place in the order.
 * Number:   whole "2", decimal "2.5" or ".5", fraction "5/8", mixed "2 1/2", "2-1/2", "2 (vulgar half)" with blanks,
 *           one hyphen or, before a vulgar fraction, nothing between; with ASCII digits. The fraction may use / or
 *           U+2044 or U+2215, without blanks; vulgar fractions are those of U+00BC..00BE and U+2150..215E, U+2189.
 * Sign:     + - or U+2212.
 * Unit:     in in. inch inches " U+2033 U+201D U+201C or a foot mark twice; ft ft. foot feet ' U+2032 U+2019 U+2018;
 *           yd yd. yds yds. yard yards; mm; cm; m; and millimetre(s), centimetre(s), metre(s) in both spellings;
 *           letters in either case.
 * Blank:    space, tab, line feed, carriage return, U+00A0 no-break, U+202F narrow no-break, U+2009 thin space.
 *
 * The decimal sign is the one that the spec names; the other one is refused (MUSLIN_ERR_TEXT_DECIMAL), never guessed.
 * Values off the tick grid are rounded once, for the whole text, to the nearest tick, and reported as inexact.
 * spec null means MUSLIN_PARSE_SPEC_INIT.
 *
 * Statuses, those of the text with place and bytes in *problem:
 *   MUSLIN_ERR_NULL (spec and problem may be null, and the text of 0 bytes), the struct statuses, MUSLIN_ERR_CHOICE
 *     (unit, decimal sign);
 *   MUSLIN_ERR_TEXT_ENCODING: not UTF-8, looked for first and in the whole text; names one byte;
 *   MUSLIN_ERR_TEXT_EMPTY: the text ends before its first number; bytes 0, at the end;
 *   MUSLIN_ERR_TEXT_SYNTAX: no number where the first one, a denominator or decimals should stand; names what stands
 *     there, bytes 0 at the end;
 *   MUSLIN_ERR_TEXT_DECIMAL: the other decimal sign, at the start or right behind a number; names it;
 *   MUSLIN_ERR_TEXT_UNIT: a word that is no unit, or a unit not smaller than the one before; names the word, or the
 *     number whose default unit is out of order;
 *   MUSLIN_ERR_TEXT_TRAILING: something more behind a whole length; names all the rest;
 *   MUSLIN_ERR_TEXT_ZERO_DENOMINATOR: names the denominator;
 *   MUSLIN_ERR_OVERFLOW: the length passes MUSLIN_LENGTH_MAX; or a number has more than 18 digits, zeros at its outer
 *     ends not counted; or several parts have fractions of a tick whose common denominator passes 2^62 - 1. Names the
 *     number.
 * O(bytes). Example: muslin_length_parse("2 1/2", 5, NULL, &parsed, NULL) gives 20320. Since 1.0. */
MUSLIN_API muslin_status muslin_length_parse(const char *text, size_t bytes, const struct muslin_parse_spec *spec,
                                             struct muslin_parsed *out, struct muslin_problem *problem);

/* ---- text out -------------------------------------------------------------------------------------------------- */

enum muslin_style {
    MUSLIN_STYLE_INCH_FRACTION = 1, /* 2 1/2 in */
    MUSLIN_STYLE_INCH_DECIMAL = 2,  /* 2.5 in */
    MUSLIN_STYLE_YARD_FRACTION = 3, /* 1 3/8 yd */
    MUSLIN_STYLE_MM = 4,            /* 63.5 mm */
    MUSLIN_STYLE_CM = 5             /* 6.35 cm */
};

#define MUSLIN_FORMAT_UNICODE 1u /* vulgar fractions, fraction slash and U+2212 instead of ASCII */
#define MUSLIN_FORMAT_BARE 2u    /* without the unit */

struct muslin_format_spec {
    uint32_t size;
    uint32_t flags;       /* sum of MUSLIN_FORMAT_... */
    int32_t style;        /* enum muslin_style */
    int32_t denominator;  /* of fraction styles, 1 .. 64; shown in lowest terms */
    int32_t decimals;     /* of decimal styles, 0 .. 6; trailing zeros are not shown */
    int32_t decimal_sign; /* '.' or ',' */
    int32_t direction;    /* enum muslin_direction, for a length off the style's grid */
    int32_t pad;          /* 0 */
};
/* Inches with fractions to 1/64, nearest, ASCII, with the unit. */
#define MUSLIN_FORMAT_SPEC_INIT { sizeof(struct muslin_format_spec), 0, 1, 64, 4, 46, 3, 0 }

/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_format_spec_init(&writing, sizeof writing). Since 1.0. */
MUSLIN_API muslin_status muslin_format_spec_init(struct muslin_format_spec *spec, uint32_t size);

/* Writes the length as terminated text. *need (may be null) gets the bytes needed including the terminator; *exact
 * (may be null) gets 1 when the text says exactly this length. With cap 0 (buf may then be null) it only asks: writes
 * *need and *exact and succeeds. If cap is too small: MUSLIN_ERR_BUFFER, and only *need is written. Promise: whenever
 * *exact is 1, parsing the text (with the same decimal sign, and the style's unit as default) gives the same length
 * back, exact. Minus zero is never shown. spec null means MUSLIN_FORMAT_SPEC_INIT.
 * Statuses: MUSLIN_ERR_NULL (buf, when cap is not 0), the struct statuses, MUSLIN_ERR_RANGE (length beyond
 * MUSLIN_LENGTH_MAX; denominator and decimals, each checked in every style), MUSLIN_ERR_CHOICE (style, direction,
 * decimal sign), MUSLIN_ERR_BUFFER. The longest text is under 64 bytes. Example: 20320 gives "2 1/2 in". Since 1.0. */
MUSLIN_API muslin_status muslin_length_format(muslin_len a, const struct muslin_format_spec *spec, char *buf,
                                              size_t cap, size_t *need, int32_t *exact,
                                              struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
