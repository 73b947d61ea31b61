/* test_length_text.c - lengths read from text and written as text.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>

#include "test_length.h"

#define COUNT(array) (sizeof(array) / sizeof((array)[0]))

static struct muslin_parse_spec parse_spec_of(int32_t default_unit, int32_t decimal_sign)
{
    struct muslin_parse_spec spec = MUSLIN_PARSE_SPEC_INIT;
    spec.default_unit = default_unit;
    spec.decimal_sign = decimal_sign;
    return spec;
}

/* The text must be read, exactly on the tick grid. */
static muslin_len read_with(const char *text, const struct muslin_parse_spec *spec)
{
    struct muslin_parsed parsed = { .size = sizeof parsed };
    ck_assert_msg(muslin_length_parse(text, strlen(text), spec, &parsed, NULL) == MUSLIN_OK, "%s", text);
    ck_assert_msg(parsed.exact == 1, "%s", text);
    return parsed.value;
}

static muslin_len read_exactly(const char *text)
{
    return read_with(text, NULL);
}

/* The text must be refused, with its place, and leave the output alone. */
static void ck_refused_text(const char *text, size_t length, const struct muslin_parse_spec *spec, muslin_status status,
                            int64_t at, int64_t bytes)
{
    struct muslin_parsed parsed = { .size = sizeof parsed, .value = 77, .exact = 77, .unit = 77 };
    struct muslin_problem problem = PROBLEM;
    muslin_status found = muslin_length_parse(text, length, spec, &parsed, &problem);
    ck_assert_msg(found == status, "\"%s\": %s", text, muslin_status_name(found));
    ck_assert_msg(problem.at == at && problem.bytes == bytes, "\"%s\": at %d, %d bytes", text, (int)problem.at,
                  (int)problem.bytes);
    ck_assert_int_eq(problem.status, status);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TEXT);
    ck_assert(parsed.value == 77 && parsed.exact == 77 && parsed.unit == 77);
}

struct refused {
    const char *text;
    muslin_status status;
    int64_t at;
    int64_t bytes;
};

static void ck_all_refused(const struct refused *rows, size_t count)
{
    for (size_t i = 0; i < count; i++)
        ck_refused_text(rows[i].text, strlen(rows[i].text), NULL, rows[i].status, rows[i].at, rows[i].bytes);
}

/* ---- what is read ---------------------------------------------------------------------------------------------- */

START_TEST(lengths_are_read_as_quilters_write_them)
{
    static const struct {
        const char *text;
        muslin_len value;
    } rows[] = {
        { "2", WHOLE_IN(2) },
        { "2 1/2", IN(2, 1, 2) },
        { "2-1/2", IN(2, 1, 2) },
        { "2.5", IN(2, 1, 2) },
        { ".5", IN(0, 1, 2) },
        { "5/8", IN(0, 5, 8) },
        { "9/8", IN(1, 1, 8) },
        { "2 9/8", IN(3, 1, 8) },
        { "0", 0 },
        { "0/5", 0 },
        { "18 in", WHOLE_IN(18) },
        { "18in", WHOLE_IN(18) },
        { "18\"", WHOLE_IN(18) },
        { "1 3/8 yd", IN(49, 1, 2) },
        { "1 yd 4 1/2 in", IN(40, 1, 2) },
        { "1yd4 1/2in", IN(40, 1, 2) },
        { "5' 6\"", WHOLE_IN(66) },
        { "5'6\"", WHOLE_IN(66) },
        { "5' 6", WHOLE_IN(66) },
        { "1 yd 1 ft 1 in", WHOLE_IN(49) },
        { "6.35 cm", IN(2, 1, 2) },
        { "63.5 mm", IN(2, 1, 2) },
        { "0.9144 m", WHOLE_IN(36) },
        { "1 m 2 cm 3 mm", 1023 * 320 },
        { "007", WHOLE_IN(7) },
        { "2.50000000000000000000000000", IN(2, 1, 2) },
        { "00000000000000000000000000002", WHOLE_IN(2) },
        { "00000000000000000000000000005/8", IN(0, 5, 8) },
        { "  2 1/2 in  ", IN(2, 1, 2) },
        { "2\t1/2\tin", IN(2, 1, 2) },
    };
    for (size_t i = 0; i < COUNT(rows); i++)
        ck_assert_msg(read_exactly(rows[i].text) == rows[i].value, "%s", rows[i].text);
}
END_TEST

START_TEST(decimals_of_a_conversion_table_are_its_fractions)
{
    /* Melanie, Fraction conversions (2014) */
    ck_assert_int_eq(read_exactly("0.0625"), IN(0, 1, 16));
    ck_assert_int_eq(read_exactly("0.375"), IN(0, 3, 8));
    ck_assert_int_eq(read_exactly("0.625"), IN(0, 5, 8));
    ck_assert_int_eq(read_exactly("0.9375"), IN(0, 15, 16));
}
END_TEST

START_TEST(a_sign_holds_for_the_whole_text)
{
    ck_assert_int_eq(read_exactly("-1/4"), -IN(0, 1, 4));
    ck_assert_int_eq(read_exactly("-2-1/2"), -IN(2, 1, 2));
    ck_assert_int_eq(read_exactly("- 1 yd 4 1/2 in"), -IN(40, 1, 2));
    ck_assert_int_eq(read_exactly("+5' 6\""), WHOLE_IN(66));
    ck_assert_int_eq(read_exactly("\xE2\x88\x92" "2"), -WHOLE_IN(2)); /* U+2212 */
    ck_assert_int_eq(read_exactly("-0"), 0);
}
END_TEST

START_TEST(every_word_and_mark_of_a_unit_is_known_in_either_case)
{
    static const struct {
        int32_t unit;
        const char *words[10];
    } rows[] = {
        { MUSLIN_LENGTH_UNIT_INCH,
          { "in", "in.", "inch", "inches", "\"", "\xE2\x80\xB3", "\xE2\x80\x9D", "\xE2\x80\x9C", "''",
            "\xE2\x80\xB2\xE2\x80\xB2" } },
        { MUSLIN_LENGTH_UNIT_FOOT,
          { "ft", "ft.", "foot", "feet", "'", "\xE2\x80\xB2", "\xE2\x80\x99", "\xE2\x80\x98" } },
        { MUSLIN_LENGTH_UNIT_YARD, { "yd", "yd.", "yds", "yds.", "yard", "yards" } },
        { MUSLIN_LENGTH_UNIT_MM, { "mm", "millimetre", "millimetres", "millimeter", "millimeters" } },
        { MUSLIN_LENGTH_UNIT_CM, { "cm", "centimetre", "centimetres", "centimeter", "centimeters" } },
        { MUSLIN_LENGTH_UNIT_M, { "m", "metre", "metres", "meter", "meters" } },
    };
    for (size_t i = 0; i < COUNT(rows); i++)
        for (size_t j = 0; j < 10 && rows[i].words[j] != NULL; j++) {
            char text[40];
            struct muslin_parsed parsed = { .size = sizeof parsed };
            snprintf(text, sizeof text, "3%s", rows[i].words[j]);
            ck_ok(muslin_length_parse(text, strlen(text), NULL, &parsed, NULL));
            ck_assert_int_eq(parsed.value, 3 * muslin_length_unit_ticks(rows[i].unit));
            ck_assert_int_eq(parsed.unit, rows[i].unit);
            for (char *c = text; *c != 0; c++)
                if (*c >= 'a' && *c <= 'z')
                    *c = (char)(*c - 'a' + 'A');
            ck_assert_int_eq(read_exactly(text), 3 * muslin_length_unit_ticks(rows[i].unit));
        }
}
END_TEST

/* The Unicode Standard, code charts Latin-1 Supplement and Number Forms. */
static const char *const vulgar_fractions[][2] = {
    { "\xC2\xBC", "1/4" },      { "\xC2\xBD", "1/2" },      { "\xC2\xBE", "3/4" },      { "\xE2\x85\x90", "1/7" },
    { "\xE2\x85\x91", "1/9" },  { "\xE2\x85\x92", "1/10" }, { "\xE2\x85\x93", "1/3" },  { "\xE2\x85\x94", "2/3" },
    { "\xE2\x85\x95", "1/5" },  { "\xE2\x85\x96", "2/5" },  { "\xE2\x85\x97", "3/5" },  { "\xE2\x85\x98", "4/5" },
    { "\xE2\x85\x99", "1/6" },  { "\xE2\x85\x9A", "5/6" },  { "\xE2\x85\x9B", "1/8" },  { "\xE2\x85\x9C", "3/8" },
    { "\xE2\x85\x9D", "5/8" },  { "\xE2\x85\x9E", "7/8" },  { "\xE2\x86\x89", "0/3" },
};

START_TEST(every_vulgar_fraction_equals_its_two_numbers)
{
    for (size_t i = 0; i < COUNT(vulgar_fractions); i++) {
        static const char *const around[][2] = { { "%s", "%s" }, { "2%s in", "2 %s in" }, { "2 %s", "2 %s" },
                                                 { "2-%s yd", "2-%s yd" } };
        for (size_t j = 0; j < COUNT(around); j++) {
            char vulgar[40];
            char plain[40];
            struct muslin_parsed a = { .size = sizeof a };
            struct muslin_parsed b = { .size = sizeof b };
            snprintf(vulgar, sizeof vulgar, around[j][0], vulgar_fractions[i][0]);
            snprintf(plain, sizeof plain, around[j][1], vulgar_fractions[i][1]);
            ck_ok(muslin_length_parse(vulgar, strlen(vulgar), NULL, &a, NULL));
            ck_ok(muslin_length_parse(plain, strlen(plain), NULL, &b, NULL));
            ck_assert_msg(a.value == b.value && a.exact == b.exact, "%s", plain);
        }
    }
    ck_assert_int_eq(read_exactly("2\xC2\xBD"), IN(2, 1, 2));
}
END_TEST

START_TEST(a_fraction_may_use_any_of_three_slashes)
{
    ck_assert_int_eq(read_exactly("2 1\xE2\x81\x84" "2"), IN(2, 1, 2)); /* U+2044 */
    ck_assert_int_eq(read_exactly("2 1\xE2\x88\x95" "2"), IN(2, 1, 2)); /* U+2215 */
}
END_TEST

START_TEST(every_blank_is_a_blank)
{
    static const char *const blanks[] = { " ",        "\t",           "\n",           "\r\n",
                                          "\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89", " \xC2\xA0\t" };
    for (size_t i = 0; i < COUNT(blanks); i++) {
        const char *b = blanks[i];
        char text[80];
        snprintf(text, sizeof text, "%s-%s1%s1/2%syd%s4%s1/4%sin%s", b, b, b, b, b, b, b, b);
        ck_assert_int_eq(read_exactly(text), -IN(58, 1, 4));
    }
}
END_TEST

START_TEST(a_number_without_unit_takes_the_default_one)
{
    for (int32_t unit = MUSLIN_LENGTH_UNIT_INCH; unit <= MUSLIN_LENGTH_UNIT_M; unit++) {
        struct muslin_parse_spec spec = parse_spec_of(unit, '.');
        struct muslin_parsed parsed = { .size = sizeof parsed };
        ck_ok(muslin_length_parse("2.5", 3, &spec, &parsed, NULL));
        ck_assert_int_eq(2 * parsed.value, 5 * muslin_length_unit_ticks(unit));
        ck_assert_int_eq(parsed.unit, unit);
    }
}
END_TEST

START_TEST(the_unit_reported_is_that_of_the_last_part)
{
    struct muslin_parsed parsed = { .size = sizeof parsed };
    ck_ok(muslin_length_parse("1 yd 2 ft", 9, NULL, &parsed, NULL));
    ck_assert_int_eq(parsed.unit, MUSLIN_LENGTH_UNIT_FOOT);
    ck_ok(muslin_length_parse("1 yd 2", 6, NULL, &parsed, NULL));
    ck_assert_int_eq(parsed.unit, MUSLIN_LENGTH_UNIT_INCH);
}
END_TEST

START_TEST(a_comma_is_the_decimal_sign_on_request)
{
    struct muslin_parse_spec comma = parse_spec_of(MUSLIN_LENGTH_UNIT_CM, ',');
    ck_assert_int_eq(read_with("6,35", &comma), IN(2, 1, 2));
    ck_assert_int_eq(read_with(",5 in", &comma), IN(0, 1, 2));
    ck_assert_int_eq(read_with("18 in.", &comma), WHOLE_IN(18));
    ck_assert_int_eq(read_with("1 yd. 2,5 in.", &comma), IN(38, 1, 2));
}
END_TEST

/* ---- rounding once --------------------------------------------------------------------------------------------- */

static void ck_inexact(const char *text, muslin_len value)
{
    struct muslin_parsed parsed = { .size = sizeof parsed };
    ck_ok(muslin_length_parse(text, strlen(text), NULL, &parsed, NULL));
    ck_assert_msg(parsed.value == value && parsed.exact == 0, "%s: %lld", text, (long long)parsed.value);
}

START_TEST(a_text_off_the_grid_is_the_nearest_tick_and_says_so)
{
    ck_inexact("1/3", 2709);       /* 2709 1/3 ticks */
    ck_inexact("2/3", 5419);       /* 5418 2/3 */
    ck_inexact("-2/3", -5419);
    ck_inexact("1/128", 64);       /* 63 1/2: ties go upwards */
    ck_inexact("-1/128", -63);
    ck_inexact("0.01 in", 81);     /* 81.28 */
    ck_inexact("0.001 mm", 0);     /* 0.32 */
    ck_inexact("0.000000000000000001 m", 0);
    ck_inexact("0.999999999999999999", 8128);
}
END_TEST

START_TEST(parts_are_summed_before_they_are_rounded)
{
    /* 0.1 ft and 0.8 in are 9753.6 and 6502.4 ticks, 2 in together. */
    ck_assert_int_eq(read_exactly("0.1 ft 0.8 in"), WHOLE_IN(2));
    /* 36/7 + 6/7 = 42/7 in */
    ck_assert_int_eq(read_exactly("1/7 yd 6/7 in"), WHOLE_IN(6));
    /* 1/36 ft is 1/3 in, 2709 1/3 ticks; apart, twice 2709 would be one too few. */
    ck_inexact("1/36 ft 1/3 in", 5419);
    /* 0.48 and 0.16 tick */
    ck_inexact("0.00015 cm 0.0005 mm", 1);
}
END_TEST

/* A number of few digits is worked out in 64 bits, one of many in more. */
START_TEST(zeros_that_say_nothing_change_nothing)
{
    static const char *const zeros = "000000000000";
    uint64_t state = 7;
    for (int i = 0; i < 2000; i++) {
        const int whole = (int)draw_from(&state, 0, 99999), above = (int)draw_from(&state, 0, 999999);
        const int below = (int)draw_from(&state, 1, 999999);
        char few[2][40], many[2][80];
        snprintf(few[0], sizeof few[0], "%d %d/%d yd", whole, above, below);
        snprintf(many[0], sizeof many[0], "%d %d%s/%d%s yd", whole, above, zeros, below, zeros);
        snprintf(few[1], sizeof few[1], "%d.%06d m", whole, above);
        snprintf(many[1], sizeof many[1], "%d.%06d%s m", whole, above, zeros);
        for (int j = 0; j < 2; j++) {
            struct muslin_parsed a = { .size = sizeof a }, b = { .size = sizeof b };
            ck_ok(muslin_length_parse(few[j], strlen(few[j]), NULL, &a, NULL));
            ck_ok(muslin_length_parse(many[j], strlen(many[j]), NULL, &b, NULL));
            ck_assert_msg(a.value == b.value && a.exact == b.exact, "%s, %s", few[j], many[j]);
        }
    }
}
END_TEST

/* ---- the ends of the range --------------------------------------------------------------------------------------- */

START_TEST(a_text_reaches_exactly_to_the_end_of_the_range)
{
    /* 2^62 - 1 = 567382630219905 x 8128 + 63, and a 64th of an inch has 127 ticks. */
    ck_assert_int_eq(read_exactly("567382630219905 63/8128"), MUSLIN_LENGTH_MAX);
    ck_assert_int_eq(read_exactly("-567382630219905 63/8128 in"), -MUSLIN_LENGTH_MAX);
    ck_inexact("567382630219905 125/16256", MUSLIN_LENGTH_MAX);   /* 62 1/2 */
    ck_inexact("-567382630219905 127/16256", -MUSLIN_LENGTH_MAX); /* -63 1/2: upwards */
}
END_TEST

START_TEST(a_text_beyond_the_range_is_an_overflow)
{
    const struct refused rows[] = {
        { "567382630219905 64/8128", MUSLIN_ERR_OVERFLOW, 0, 23 },
        { "-567382630219905 64/8128", MUSLIN_ERR_OVERFLOW, 1, 23 },
        { "567382630219905 127/16256", MUSLIN_ERR_OVERFLOW, 0, 25 },
        { "-567382630219905 1016001/130048000", MUSLIN_ERR_OVERFLOW, 1, 33 }, /* just above 63 1/2 */
        { "999999999999999999", MUSLIN_ERR_OVERFLOW, 0, 18 },
        { "999999999999999999 m", MUSLIN_ERR_OVERFLOW, 0, 18 },
        { "999999999999999999/2", MUSLIN_ERR_OVERFLOW, 0, 20 },
        { "15760628617219 yd 999999999999 in", MUSLIN_ERR_OVERFLOW, 18, 12 },
        /* 4/5 of a tick beyond 2^62 - 1 twice: 2^63 to the nearest */
        { "15760628617219 853759/1463040 yd 567382630219905 319/40640 in", MUSLIN_ERR_OVERFLOW, 33, 25 },
    };
    ck_all_refused(rows, COUNT(rows));
}
END_TEST

START_TEST(a_number_of_more_than_eighteen_digits_is_an_overflow)
{
    const struct refused rows[] = {
        { "1000000000000000000", MUSLIN_ERR_OVERFLOW, 0, 19 },
        { "001000000000000000000 mm", MUSLIN_ERR_OVERFLOW, 2, 19 },
        { "1.0000000000000000001", MUSLIN_ERR_OVERFLOW, 2, 19 },
        { "1 yd 1/1000000000000000000", MUSLIN_ERR_OVERFLOW, 7, 19 },
        { "1000000000000000000/1000000000000000000", MUSLIN_ERR_OVERFLOW, 0, 19 },
        { "2 1000000000000000000/3", MUSLIN_ERR_OVERFLOW, 2, 19 },
        { "99999999999999999999999999999999999999999999999999", MUSLIN_ERR_OVERFLOW, 0, 50 },
    };
    ck_all_refused(rows, COUNT(rows));
    ck_assert_int_eq(read_exactly("999999999999999999/999999999999999999"), WHOLE_IN(1));
}
END_TEST

START_TEST(fractions_without_a_common_denominator_in_range_are_an_overflow)
{
    /* Two primes of 18 digits */
    const char text[] = "1/999999999999999989 yd 1/999999999999999967 in";
    ck_refused_text(text, strlen(text), NULL, MUSLIN_ERR_OVERFLOW, 24, 20);
}
END_TEST

/* ---- what is refused ------------------------------------------------------------------------------------------- */

START_TEST(a_text_without_a_number_is_empty)
{
    const struct refused rows[] = {
        { "", MUSLIN_ERR_TEXT_EMPTY, 0, 0 },
        { "  \t ", MUSLIN_ERR_TEXT_EMPTY, 4, 0 },
        { "-", MUSLIN_ERR_TEXT_EMPTY, 1, 0 },
        { " + ", MUSLIN_ERR_TEXT_EMPTY, 3, 0 },
        { "\xC2\xA0", MUSLIN_ERR_TEXT_EMPTY, 2, 0 },
    };
    ck_all_refused(rows, COUNT(rows));
    ck_refused_text(NULL, 0, NULL, MUSLIN_ERR_TEXT_EMPTY, 0, 0);
}
END_TEST

START_TEST(what_stands_in_place_of_a_number_is_named)
{
    const struct refused rows[] = {
        { "in", MUSLIN_ERR_TEXT_SYNTAX, 0, 1 },
        { "\"", MUSLIN_ERR_TEXT_SYNTAX, 0, 1 },
        { " /2", MUSLIN_ERR_TEXT_SYNTAX, 1, 1 },
        { "--2", MUSLIN_ERR_TEXT_SYNTAX, 1, 1 },
        { "-+2", MUSLIN_ERR_TEXT_SYNTAX, 1, 1 },
        { "\xF0\x9F\xA7\xB5 2", MUSLIN_ERR_TEXT_SYNTAX, 0, 4 }, /* U+1F9F5, a spool of thread */
        { "1/", MUSLIN_ERR_TEXT_SYNTAX, 2, 0 },
        { "1/x", MUSLIN_ERR_TEXT_SYNTAX, 2, 1 },
        { "1/ 2", MUSLIN_ERR_TEXT_SYNTAX, 2, 1 },
        { "1/-2", MUSLIN_ERR_TEXT_SYNTAX, 2, 1 },
        { "2 1/\xC2\xBD", MUSLIN_ERR_TEXT_SYNTAX, 4, 2 },
        { "2-1/", MUSLIN_ERR_TEXT_SYNTAX, 4, 0 },
        { ".", MUSLIN_ERR_TEXT_SYNTAX, 0, 1 },
        { ".\xC2\xBD", MUSLIN_ERR_TEXT_SYNTAX, 0, 1 },
        { "2.", MUSLIN_ERR_TEXT_SYNTAX, 2, 0 },
        { "2. in", MUSLIN_ERR_TEXT_SYNTAX, 2, 1 },
        { "2..5", MUSLIN_ERR_TEXT_SYNTAX, 2, 1 },
    };
    ck_all_refused(rows, COUNT(rows));
}
END_TEST

START_TEST(what_follows_a_whole_length_is_named_to_the_end)
{
    const struct refused rows[] = {
        { "2 3", MUSLIN_ERR_TEXT_TRAILING, 2, 1 },
        { "2 1/2 3", MUSLIN_ERR_TEXT_TRAILING, 6, 1 },
        { "2-1", MUSLIN_ERR_TEXT_TRAILING, 1, 2 },
        { "2- 1/2", MUSLIN_ERR_TEXT_TRAILING, 1, 5 },
        { "2 -1/2", MUSLIN_ERR_TEXT_TRAILING, 2, 4 },
        { "2--1/2", MUSLIN_ERR_TEXT_TRAILING, 1, 5 },
        { "1/2/3", MUSLIN_ERR_TEXT_TRAILING, 3, 2 },
        { "1 /2", MUSLIN_ERR_TEXT_TRAILING, 2, 2 },
        { "2.5 1/2", MUSLIN_ERR_TEXT_TRAILING, 4, 3 },
        { "2.5/8", MUSLIN_ERR_TEXT_TRAILING, 3, 2 },
        { "2.5.5", MUSLIN_ERR_TEXT_TRAILING, 3, 2 },
        { "\xC2\xBD\xC2\xBD", MUSLIN_ERR_TEXT_TRAILING, 2, 2 },
        { "2 in x", MUSLIN_ERR_TEXT_TRAILING, 5, 1 },
        { "2 in -3 mm", MUSLIN_ERR_TEXT_TRAILING, 5, 5 },
        { "2 in, please", MUSLIN_ERR_TEXT_TRAILING, 4, 8 },
        { "2 inch.", MUSLIN_ERR_TEXT_TRAILING, 6, 1 },
        { "2 mm.", MUSLIN_ERR_TEXT_TRAILING, 4, 1 },
        { "2 in..", MUSLIN_ERR_TEXT_TRAILING, 5, 1 },
        { "2 .", MUSLIN_ERR_TEXT_TRAILING, 2, 1 },
        { "5' 6\" \"", MUSLIN_ERR_TEXT_TRAILING, 6, 1 },
        { "2 \xE2\x82\xAC", MUSLIN_ERR_TEXT_TRAILING, 2, 3 }, /* a currency sign */
        { "2 \xE2\x80\x80", MUSLIN_ERR_TEXT_TRAILING, 2, 3 }, /* U+2000, a blank that is none of ours */
    };
    ck_all_refused(rows, COUNT(rows));
    ck_refused_text("2 in\0", 5, NULL, MUSLIN_ERR_TEXT_TRAILING, 4, 1);
}
END_TEST

START_TEST(a_word_that_is_no_unit_is_named_whole)
{
    const struct refused rows[] = {
        { "2 ells", MUSLIN_ERR_TEXT_UNIT, 2, 4 },
        { "2x", MUSLIN_ERR_TEXT_UNIT, 1, 1 },
        { "2 i", MUSLIN_ERR_TEXT_UNIT, 2, 1 },
        { "2 inc", MUSLIN_ERR_TEXT_UNIT, 2, 3 },
        { "2 inchess", MUSLIN_ERR_TEXT_UNIT, 2, 7 },
        { "2 millimetress", MUSLIN_ERR_TEXT_UNIT, 2, 12 },
        { "2 ells 3 in", MUSLIN_ERR_TEXT_UNIT, 2, 4 },
        { "2 inx3", MUSLIN_ERR_TEXT_UNIT, 2, 3 },
        { "2 \xD0\xBC", MUSLIN_ERR_TEXT_UNIT, 2, 2 }, /* a letter of another alphabet that looks like m */
        { "2 m\xC3\xA9tres", MUSLIN_ERR_TEXT_UNIT, 2, 7 },
        { "2 azAZ\xC3\x80", MUSLIN_ERR_TEXT_UNIT, 2, 6 }, /* with the first and last letters, and U+00C0 */
        { "2 Z[a", MUSLIN_ERR_TEXT_UNIT, 2, 1 }, /* a sign between the capitals and the small letters */
    };
    ck_all_refused(rows, COUNT(rows));
}
END_TEST

START_TEST(units_that_do_not_fall_are_refused)
{
    const struct refused rows[] = {
        { "5 in 6 ft", MUSLIN_ERR_TEXT_UNIT, 7, 2 },
        { "5 in 6 in", MUSLIN_ERR_TEXT_UNIT, 7, 2 },
        { "5 in 6", MUSLIN_ERR_TEXT_UNIT, 5, 1 },
        { "1 yd 2 m", MUSLIN_ERR_TEXT_UNIT, 7, 1 },
        { "5\" 6 1/2", MUSLIN_ERR_TEXT_UNIT, 3, 5 },
    };
    ck_all_refused(rows, COUNT(rows));
    struct muslin_parse_spec yards = parse_spec_of(MUSLIN_LENGTH_UNIT_YARD, '.');
    ck_refused_text("1 yd 2", 6, &yards, MUSLIN_ERR_TEXT_UNIT, 5, 1);
}
END_TEST

START_TEST(the_other_decimal_sign_is_refused_never_guessed)
{
    const struct refused rows[] = {
        { "2,5", MUSLIN_ERR_TEXT_DECIMAL, 1, 1 },
        { ",5", MUSLIN_ERR_TEXT_DECIMAL, 0, 1 },
        { "- ,5", MUSLIN_ERR_TEXT_DECIMAL, 2, 1 },
        { "1,000.5", MUSLIN_ERR_TEXT_DECIMAL, 1, 1 },
        { "1.000,5", MUSLIN_ERR_TEXT_DECIMAL, 5, 1 },
        { "1 yd 2,5 in", MUSLIN_ERR_TEXT_DECIMAL, 6, 1 },
        { "1/2,", MUSLIN_ERR_TEXT_DECIMAL, 3, 1 },
    };
    ck_all_refused(rows, COUNT(rows));
    struct muslin_parse_spec comma = parse_spec_of(MUSLIN_LENGTH_UNIT_INCH, ',');
    ck_refused_text("2.5", 3, &comma, MUSLIN_ERR_TEXT_DECIMAL, 1, 1);
    ck_refused_text(".5", 2, &comma, MUSLIN_ERR_TEXT_DECIMAL, 0, 1);
    ck_refused_text("1.000,5", 7, &comma, MUSLIN_ERR_TEXT_DECIMAL, 1, 1);
}
END_TEST

START_TEST(a_fraction_over_zero_is_refused)
{
    const struct refused rows[] = {
        { "1/0", MUSLIN_ERR_TEXT_ZERO_DENOMINATOR, 2, 1 },
        { "0/0", MUSLIN_ERR_TEXT_ZERO_DENOMINATOR, 2, 1 },
        { "2 1/000 in", MUSLIN_ERR_TEXT_ZERO_DENOMINATOR, 4, 3 },
        { "2-1/0", MUSLIN_ERR_TEXT_ZERO_DENOMINATOR, 4, 1 },
    };
    ck_all_refused(rows, COUNT(rows));
}
END_TEST

START_TEST(bytes_that_are_no_utf8_are_named)
{
    /* RFC 3629, section 4, and the examples of overlong forms in its section 10 */
    const struct refused rows[] = {
        { "\x80", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "2 in\xBF", MUSLIN_ERR_TEXT_ENCODING, 4, 1 },
        { "2\xC0\x80", MUSLIN_ERR_TEXT_ENCODING, 1, 1 },
        { "1\xC0\xAF" "2", MUSLIN_ERR_TEXT_ENCODING, 1, 1 },
        { "\xC1\xBF", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xE0\x80\xAF", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xE0\x9F\xBF", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xED\xA0\x80", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xED\xBF\xBF", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xF0\x80\x80\xAF", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xF0\x8F\xBF\xBF", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xF4\x90\x80\x80", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xF5\x80\x80\x80", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xFE", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "\xFF", MUSLIN_ERR_TEXT_ENCODING, 0, 1 },
        { "2 \xC2", MUSLIN_ERR_TEXT_ENCODING, 2, 1 },
        { "2 \xE2\x85", MUSLIN_ERR_TEXT_ENCODING, 2, 1 },
        { "2 \xF0\x9F\xA7", MUSLIN_ERR_TEXT_ENCODING, 2, 1 },
        { "2 \xC2\x32", MUSLIN_ERR_TEXT_ENCODING, 2, 1 },
        { "2 \xE2\x85\xC0", MUSLIN_ERR_TEXT_ENCODING, 2, 1 },
        { "2 \xF0\x9F\xA7 ", MUSLIN_ERR_TEXT_ENCODING, 2, 1 },
        { "nonsense first, \xFF later", MUSLIN_ERR_TEXT_ENCODING, 16, 1 },
    };
    ck_all_refused(rows, COUNT(rows));
}
END_TEST

START_TEST(the_ends_of_each_length_of_utf8_are_valid)
{
    /* RFC 3629, section 3: the first and last character of each length, and those beside the surrogates */
    const struct refused rows[] = {
        { "\x7F", MUSLIN_ERR_TEXT_SYNTAX, 0, 1 },
        { "\xC2\x80", MUSLIN_ERR_TEXT_SYNTAX, 0, 2 },
        { "\xDF\xBF", MUSLIN_ERR_TEXT_SYNTAX, 0, 2 },
        { "\xE0\xA0\x80", MUSLIN_ERR_TEXT_SYNTAX, 0, 3 },
        { "\xED\x9F\xBF", MUSLIN_ERR_TEXT_SYNTAX, 0, 3 },
        { "\xEE\x80\x80", MUSLIN_ERR_TEXT_SYNTAX, 0, 3 },
        { "\xEF\xBF\xBF", MUSLIN_ERR_TEXT_SYNTAX, 0, 3 },
        { "\xF0\x90\x80\x80", MUSLIN_ERR_TEXT_SYNTAX, 0, 4 },
        { "\xF4\x8F\xBF\xBF", MUSLIN_ERR_TEXT_SYNTAX, 0, 4 },
    };
    ck_all_refused(rows, COUNT(rows));
}
END_TEST

START_TEST(the_sentence_quotes_what_is_wrong)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_parsed parsed = { .size = sizeof parsed };
    ck_status(muslin_length_parse("2,5 in", 6, NULL, &parsed, &problem), MUSLIN_ERR_TEXT_DECIMAL);
    ck_assert_int_eq(strncmp(problem.text, "At byte 1 of the text, \",\": ", 28), 0);
    ck_assert_int_ne(muslin_length_parse("2 ~", 3, NULL, &parsed, &problem), MUSLIN_OK);
    ck_assert_int_eq(strncmp(problem.text, "At byte 2 of the text, \"~\": ", 28), 0);
    ck_assert_int_ne(muslin_length_parse("2 \001", 3, NULL, &parsed, &problem), MUSLIN_OK);
    ck_assert_int_eq(strncmp(problem.text, "At byte 2 of the text: ", 23), 0);
    ck_status(muslin_length_parse("2 \xD0\xBC", 4, NULL, &parsed, &problem), MUSLIN_ERR_TEXT_UNIT);
    ck_assert_int_eq(strncmp(problem.text, "At byte 2 of the text: ", 23), 0);
    ck_status(muslin_length_parse("1/", 2, NULL, &parsed, &problem), MUSLIN_ERR_TEXT_SYNTAX);
    ck_assert_int_eq(strncmp(problem.text, "At byte 2 of the text: ", 23), 0);
}
END_TEST

START_TEST(a_long_quotation_is_cut_short)
{
    const char text[] = "2 in and then rather a lot of other words";
    struct muslin_problem problem = PROBLEM;
    struct muslin_parsed parsed = { .size = sizeof parsed };
    ck_status(muslin_length_parse(text, sizeof text - 1, NULL, &parsed, &problem), MUSLIN_ERR_TEXT_TRAILING);
    ck_assert_int_eq(problem.bytes, (int64_t)sizeof text - 1 - 5);
    ck_assert_ptr_nonnull(strstr(problem.text, "\"and then rather a lot of...\""));
}
END_TEST

/* ---- every short text ------------------------------------------------------------------------------------------ */

enum { SYMBOLS = 12, LONGEST = 5 };
static const char *const symbols[SYMBOLS] = { "0", "1", "2", "/", ".", " ", "-", "i", "n", "\"", "'", "\xC2\xBD" };

struct tally {
    int64_t tried;
    int64_t read;
    int64_t exact;
    int64_t ticks;
    int is_sound;
};

/* The text in a block of just its length, so that one byte read too many is found by the address sanitizer. */
static void try_text(struct tally *tally, char *const *blocks, const char *text, size_t length)
{
    struct muslin_parsed parsed = { .size = sizeof parsed, .value = 77 };
    struct muslin_problem problem;
    memcpy(blocks[length], text, length);
    problem.size = (uint32_t)sizeof problem;
    muslin_status status = muslin_length_parse(blocks[length], length, NULL, &parsed, &problem);
    tally->tried++;
    if (status == MUSLIN_OK) {
        tally->read++;
        tally->exact += parsed.exact;
        tally->ticks += parsed.value;
        return;
    }
    tally->is_sound &= status >= MUSLIN_ERR_TEXT_EMPTY && status <= MUSLIN_ERR_TEXT_ZERO_DENOMINATOR;
    tally->is_sound &= parsed.value == 77 && problem.at >= 0 && problem.bytes >= 0;
    tally->is_sound &= problem.at + problem.bytes <= (int64_t)length;
}

START_TEST(all_texts_of_up_to_five_signs_are_read_or_refused_as_the_grammar_says)
{
    char *blocks[2 * LONGEST + 1];
    struct tally tally = { .is_sound = 1 };
    for (size_t i = 0; i <= 2 * LONGEST; i++)
        blocks[i] = malloc(i == 0 ? 1 : i);
    for (int length = 0; length <= LONGEST; length++) {
        int turns = 1;
        for (int i = 0; i < length; i++)
            turns *= SYMBOLS;
        for (int turn = 0; turn < turns; turn++) {
            char text[2 * LONGEST];
            size_t end = 0;
            for (int rest = turn, i = 0; i < length; i++, rest /= SYMBOLS)
                for (const char *c = symbols[rest % SYMBOLS]; *c != 0; c++)
                    text[end++] = *c;
            try_text(&tally, blocks, text, end);
        }
    }
    for (size_t i = 0; i <= 2 * LONGEST; i++)
        free(blocks[i]);
    ck_assert(tally.is_sound);
    /* Counted and summed in Python with the grammar of length.h as one regular expression and fractions.Fraction: of
     * itertools.product(symbols, repeat=0..5) so many match, so many of those are whole ticks, and floor(x + 1/2) of
     * them all has this sum. */
    ck_assert_int_eq(tally.tried, 271453);
    ck_assert_int_eq(tally.read, 7466);
    ck_assert_int_eq(tally.exact, 5910);
    ck_assert_int_eq(tally.ticks, INT64_C(37206203553));
}
END_TEST

/* ---- what every call promises ---------------------------------------------------------------------------------- */

static muslin_status call_parse(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_length_parse("2 1/2", 5, spec, out, problem);
}

/* Here *out is 8 bytes of size and flags that format never sees; the rules of the output are parse's alone. */
static muslin_status call_format(const void *spec, void *out, struct muslin_problem *problem)
{
    (void)out;
    return muslin_length_format(20320, spec, NULL, 0, NULL, NULL, problem);
}

/* Like ck_spec_rules, for specs that may be null. */
static void ck_rules_of_optional_spec(const struct ruled *r)
{
    union roomy spec;
    union roomy out;
    const uint32_t wrong[] = { 0, r->spec_size - 1, 4097, UINT32_MAX };
    lay_out_output(&out, r->out_size);
    ck_ok(r->call(NULL, &out, NULL));
    for (size_t i = 0; i < COUNT(wrong); i++) {
        lay_out(&spec, r->spec, r->spec_size);
        spec.head[0] = wrong[i];
        ck_refused(r, &spec, r->out_size, MUSLIN_ERR_STRUCT_SIZE);
    }
    lay_out(&spec, r->spec, r->spec_size);
    spec.head[0] = 4096;
    spec.bytes[4095] = 1;
    ck_refused(r, &spec, r->out_size, MUSLIN_ERR_STRUCT_TAIL);
    lay_out(&spec, r->spec, r->spec_size);
    spec.head[1] = UINT32_C(1) << 31;
    ck_refused(r, &spec, r->out_size, MUSLIN_ERR_FLAGS);
    spec.head[1] = 4;
    ck_refused(r, &spec, r->out_size, MUSLIN_ERR_FLAGS);
}

START_TEST(reading_keeps_the_rules_of_structs)
{
    struct muslin_parse_spec spec = MUSLIN_PARSE_SPEC_INIT;
    struct ruled r = RULED(call_parse, spec, muslin_parsed);
    ck_rules_of_optional_spec(&r);
    ck_out_rules(&r);
    ck_newer_structs(&r);
    ck_problem_rules(&r);
}
END_TEST

START_TEST(writing_keeps_the_rules_of_structs)
{
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    struct ruled r = RULED(call_format, spec, muslin_parsed);
    ck_rules_of_optional_spec(&r);
    ck_problem_rules(&r);
    spec.pad = 1;
    ck_refused(&r, &spec, r.out_size, MUSLIN_ERR_STRUCT_TAIL);
}
END_TEST

static muslin_status init_parse(void *spec, uint32_t size)
{
    return muslin_parse_spec_init(spec, size);
}

static muslin_status init_format(void *spec, uint32_t size)
{
    return muslin_format_spec_init(spec, size);
}

START_TEST(initial_values_of_text_are_those_of_the_macros)
{
    const struct muslin_parse_spec parse = MUSLIN_PARSE_SPEC_INIT;
    const struct muslin_format_spec format = MUSLIN_FORMAT_SPEC_INIT;
    ck_init_rules(init_parse, &parse, sizeof parse);
    ck_init_rules(init_format, &format, sizeof format);
}
END_TEST

START_TEST(a_null_spec_means_the_initial_one)
{
    ck_assert_int_eq(read_with("2.5", NULL), IN(2, 1, 2));
    char text[64];
    ck_ok(muslin_length_format(IN(2, 1, 2), NULL, text, sizeof text, NULL, NULL, NULL));
    ck_assert_str_eq(text, "2 1/2 in");
}
END_TEST

START_TEST(a_missing_text_is_named)
{
    struct muslin_parsed parsed = { .size = sizeof parsed, .value = 77 };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_length_parse(NULL, 1, NULL, &parsed, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TEXT);
    ck_assert_int_eq(problem.bytes, 0);
    ck_assert_int_eq(strncmp(problem.text, "Text: ", 6), 0);
    ck_assert_int_eq(parsed.value, 77);
}
END_TEST

START_TEST(choices_of_reading_are_checked)
{
    const int32_t units[] = { 0, 7, -1, INT32_MIN, INT32_MAX };
    const int32_t decimal_signs[] = { 0, '-', '+', '/', ';', INT32_MIN, INT32_MAX };
    struct muslin_parsed parsed = { .size = sizeof parsed, .value = 77 };
    struct muslin_problem problem = PROBLEM;
    for (size_t i = 0; i < COUNT(units); i++) {
        struct muslin_parse_spec spec = parse_spec_of(units[i], '.');
        ck_status(muslin_length_parse("2", 1, &spec, &parsed, &problem), MUSLIN_ERR_CHOICE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_UNIT);
    }
    for (size_t i = 0; i < COUNT(decimal_signs); i++) {
        struct muslin_parse_spec spec = parse_spec_of(MUSLIN_LENGTH_UNIT_INCH, decimal_signs[i]);
        ck_status(muslin_length_parse("2", 1, &spec, &parsed, &problem), MUSLIN_ERR_CHOICE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_DECIMAL_SIGN);
        ck_assert_int_eq(problem.value, decimal_signs[i]);
    }
    ck_assert_int_eq(parsed.value, 77);
}
END_TEST

/* ---- what is written ------------------------------------------------------------------------------------------- */

static struct muslin_format_spec format_of(int32_t style, uint32_t flags, int32_t denominator, int32_t decimals)
{
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    spec.style = style;
    spec.flags = flags;
    spec.denominator = denominator;
    spec.decimals = decimals;
    return spec;
}

static void ck_written(muslin_len a, struct muslin_format_spec spec, const char *expected, int32_t exact)
{
    char text[64];
    size_t need = 0;
    int32_t found = 77;
    ck_ok(muslin_length_format(a, &spec, text, sizeof text, &need, &found, NULL));
    ck_assert_str_eq(text, expected);
    ck_assert_uint_eq(need, strlen(expected) + 1);
    ck_assert_int_eq(found, exact);
}

START_TEST(inches_are_written_with_fractions_in_lowest_terms)
{
    struct muslin_format_spec spec = format_of(MUSLIN_STYLE_INCH_FRACTION, 0, 64, 4);
    ck_written(IN(2, 1, 2), spec, "2 1/2 in", 1);
    ck_written(IN(0, 5, 8), spec, "5/8 in", 1);
    ck_written(IN(17, 63, 64), spec, "17 63/64 in", 1);
    ck_written(WHOLE_IN(40), spec, "40 in", 1);
    ck_written(0, spec, "0 in", 1);
    ck_written(-IN(2, 1, 2), spec, "-2 1/2 in", 1);
    ck_written(-IN(0, 1, 4), spec, "-1/4 in", 1);
}
END_TEST

START_TEST(a_length_between_two_fractions_is_written_as_the_nearest_and_says_so)
{
    struct muslin_format_spec eighths = format_of(MUSLIN_STYLE_INCH_FRACTION, 0, 8, 4);
    ck_written(IN(2, 1, 2) + 1, eighths, "2 1/2 in", 0);
    ck_written(IN(2, 15, 16), eighths, "3 in", 0);     /* a tie: upwards, over the whole */
    ck_written(-IN(2, 15, 16), eighths, "-2 7/8 in", 0);
    ck_written(-IN(0, 1, 16), eighths, "0 in", 0);     /* never minus nothing */
    ck_written(-1, eighths, "0 in", 0);
    ck_written(IN(0, 1, 3), format_of(MUSLIN_STYLE_INCH_FRACTION, 0, 3, 4), "1/3 in", 0);
    ck_written(IN(2, 2, 3), format_of(MUSLIN_STYLE_INCH_FRACTION, 0, 1, 4), "3 in", 0);
}
END_TEST

START_TEST(up_and_down_hold_for_negative_lengths_too)
{
    struct muslin_format_spec up = format_of(MUSLIN_STYLE_INCH_FRACTION, 0, 8, 1);
    struct muslin_format_spec down = up;
    up.direction = MUSLIN_DIRECTION_UP;
    down.direction = MUSLIN_DIRECTION_DOWN;
    ck_written(IN(2, 1, 2) + 1, up, "2 5/8 in", 0);
    ck_written(IN(2, 1, 2) + 1, down, "2 1/2 in", 0);
    ck_written(-IN(2, 1, 2) - 1, up, "-2 1/2 in", 0);
    ck_written(-IN(2, 1, 2) - 1, down, "-2 5/8 in", 0);
    ck_written(IN(2, 1, 2), up, "2 1/2 in", 1);
    ck_written(-1, up, "0 in", 0);
    ck_written(-1, down, "-1/8 in", 0);
    up.style = down.style = MUSLIN_STYLE_MM;
    ck_written(-33, up, "-0.1 mm", 0);
    ck_written(-33, down, "-0.2 mm", 0);
    ck_written(319, up, "1 mm", 0);
}
END_TEST

START_TEST(decimals_are_written_without_zeros_at_the_end)
{
    ck_written(IN(2, 1, 2), format_of(MUSLIN_STYLE_INCH_DECIMAL, 0, 64, 4), "2.5 in", 1);
    ck_written(IN(2, 1, 16), format_of(MUSLIN_STYLE_INCH_DECIMAL, 0, 64, 4), "2.0625 in", 1);
    ck_written(IN(2, 1, 16), format_of(MUSLIN_STYLE_INCH_DECIMAL, 0, 64, 2), "2.06 in", 0);
    ck_written(IN(2, 1, 2), format_of(MUSLIN_STYLE_INCH_DECIMAL, 0, 64, 0), "3 in", 0);
    ck_written(IN(2, 1, 64), format_of(MUSLIN_STYLE_INCH_DECIMAL, 0, 64, 6), "2.015625 in", 1);
    ck_written(WHOLE_IN(2), format_of(MUSLIN_STYLE_INCH_DECIMAL, 0, 64, 6), "2 in", 1);
    ck_written(-IN(0, 1, 2), format_of(MUSLIN_STYLE_INCH_DECIMAL, 0, 64, 6), "-0.5 in", 1);
    ck_written(1, format_of(MUSLIN_STYLE_INCH_DECIMAL, 0, 64, 6), "0.000123 in", 0); /* 1/8128 = 0.00012303... */
}
END_TEST

START_TEST(an_inch_is_25_4_mm_and_a_yard_91_44_cm)
{
    /* NIST Handbook 44, Appendix C */
    ck_written(WHOLE_IN(1), format_of(MUSLIN_STYLE_MM, 0, 64, 1), "25.4 mm", 1);
    ck_written(WHOLE_IN(36), format_of(MUSLIN_STYLE_CM, 0, 64, 2), "91.44 cm", 1);
    ck_written(WHOLE_IN(36), format_of(MUSLIN_STYLE_CM, 0, 64, 0), "91 cm", 0);
    ck_written(IN(2, 1, 2), format_of(MUSLIN_STYLE_CM, 0, 64, 3), "6.35 cm", 1);
}
END_TEST

START_TEST(yards_are_written_with_the_fractions_of_the_cutting_counter)
{
    struct muslin_format_spec eighths = format_of(MUSLIN_STYLE_YARD_FRACTION, 0, 8, 4);
    ck_written(IN(49, 1, 2), eighths, "1 3/8 yd", 1);
    ck_written(WHOLE_IN(36), eighths, "1 yd", 1);
    ck_written(WHOLE_IN(9), eighths, "1/4 yd", 1);
    ck_written(WHOLE_IN(12), format_of(MUSLIN_STYLE_YARD_FRACTION, 0, 3, 4), "1/3 yd", 1);
    eighths.direction = MUSLIN_DIRECTION_UP;
    ck_written(WHOLE_IN(112), eighths, "3 1/8 yd", 0); /* 3.11 yd */
}
END_TEST

START_TEST(unicode_has_vulgar_fractions_a_fraction_slash_and_a_minus)
{
    struct muslin_format_spec spec = format_of(MUSLIN_STYLE_INCH_FRACTION, MUSLIN_FORMAT_UNICODE, 64, 4);
    ck_written(IN(2, 1, 2), spec, "2\xC2\xBD in", 1);
    ck_written(IN(0, 7, 8), spec, "\xE2\x85\x9E in", 1);
    ck_written(-IN(2, 3, 4), spec, "\xE2\x88\x92" "2\xC2\xBE in", 1);
    ck_written(IN(2, 5, 64), spec, "2 5\xE2\x81\x84" "64 in", 1);
    ck_written(IN(0, 3, 32), spec, "3\xE2\x81\x84" "32 in", 1);
    ck_written(WHOLE_IN(2), spec, "2 in", 1);
    ck_written(-IN(0, 1, 2), format_of(MUSLIN_STYLE_INCH_DECIMAL, MUSLIN_FORMAT_UNICODE, 64, 1),
               "\xE2\x88\x92" "0.5 in", 1);
    for (size_t i = 0; i < COUNT(vulgar_fractions); i++) {
        char expected[16];
        int above, below;
        ck_assert_int_eq(sscanf(vulgar_fractions[i][1], "%d/%d", &above, &below), 2);
        spec.denominator = below;
        snprintf(expected, sizeof expected, "%s in", above == 0 ? "0" : vulgar_fractions[i][0]);
        const muslin_len nearest = (2 * MUSLIN_TICKS_PER_INCH * above / below + 1) / 2;
        ck_written(nearest, spec, expected, nearest * below == MUSLIN_TICKS_PER_INCH * above);
    }
}
END_TEST

START_TEST(a_bare_length_has_no_unit)
{
    ck_written(IN(2, 1, 2), format_of(MUSLIN_STYLE_INCH_FRACTION, MUSLIN_FORMAT_BARE, 64, 4), "2 1/2", 1);
    ck_written(IN(2, 1, 2), format_of(MUSLIN_STYLE_MM, MUSLIN_FORMAT_BARE, 64, 1), "63.5", 1);
    ck_written(-IN(2, 1, 2),
               format_of(MUSLIN_STYLE_INCH_FRACTION, MUSLIN_FORMAT_BARE | MUSLIN_FORMAT_UNICODE, 64, 4),
               "\xE2\x88\x92" "2\xC2\xBD", 1);
}
END_TEST

START_TEST(a_decimal_comma_is_written_on_request)
{
    struct muslin_format_spec comma = format_of(MUSLIN_STYLE_CM, 0, 64, 2);
    comma.decimal_sign = ',';
    ck_written(IN(2, 1, 2), comma, "6,35 cm", 1);
}
END_TEST

START_TEST(the_longest_texts_stay_under_64_bytes)
{
    const muslin_len ends[] = { MUSLIN_LENGTH_MAX, -MUSLIN_LENGTH_MAX };
    size_t longest = 0;
    for (size_t i = 0; i < COUNT(ends); i++)
        for (int32_t style = MUSLIN_STYLE_INCH_FRACTION; style <= MUSLIN_STYLE_CM; style++)
            for (int32_t denominator = 1; denominator <= 64; denominator++) {
                struct muslin_format_spec spec = format_of(style, MUSLIN_FORMAT_UNICODE, denominator, 6);
                size_t need = 0;
                ck_ok(muslin_length_format(ends[i], &spec, NULL, 0, &need, NULL, NULL));
                longest = need > longest ? need : longest;
            }
    ck_assert_uint_le(longest, 64);
    ck_assert_uint_ge(longest, 20);
}
END_TEST

START_TEST(the_ends_of_the_range_are_written)
{
    /* 2^62 - 1 = 567382630219905 x 8128 + 63 = 14411518807585587 x 320 + 63; 63/320 = 0.196875 */
    struct muslin_format_spec mm = format_of(MUSLIN_STYLE_MM, 0, 64, 6);
    ck_written(MUSLIN_LENGTH_MAX, mm, "14411518807585587.196875 mm", 1);
    ck_written(-MUSLIN_LENGTH_MAX, mm, "-14411518807585587.196875 mm", 1);
    ck_written(MUSLIN_LENGTH_MAX, format_of(MUSLIN_STYLE_INCH_FRACTION, 0, 1, 0), "567382630219905 in", 0);
    ck_written(-MUSLIN_LENGTH_MAX, format_of(MUSLIN_STYLE_INCH_FRACTION, 0, 1, 0), "-567382630219905 in", 0);
}
END_TEST

START_TEST(what_is_written_exactly_reads_back_the_same)
{
    static const int32_t unit_of_style[] = { 0,
                                             MUSLIN_LENGTH_UNIT_INCH,
                                             MUSLIN_LENGTH_UNIT_INCH,
                                             MUSLIN_LENGTH_UNIT_YARD,
                                             MUSLIN_LENGTH_UNIT_MM,
                                             MUSLIN_LENGTH_UNIT_CM };
    uint64_t state = 1;
    int64_t exact_ones = 0;
    int same = 1;
    for (int i = 0; i < 40000; i++) {
        const muslin_len reach[] = { 3000, 10000000, MUSLIN_LENGTH_MAX };
        const muslin_len steps[] = { 1, 32, 127, 1016 };
        muslin_len most = reach[i % 3];
        muslin_len a = draw_from(&state, -most, most);
        a -= a % steps[i % 4];
        struct muslin_format_spec spec = format_of((int32_t)draw_from(&state, 1, 5), (uint32_t)draw_from(&state, 0, 3),
                                                   (int32_t)draw_from(&state, 1, 64), (int32_t)draw_from(&state, 0, 6));
        spec.decimal_sign = i % 2 == 0 ? '.' : ',';
        struct muslin_parse_spec back = parse_spec_of(unit_of_style[spec.style], spec.decimal_sign);
        struct muslin_parsed parsed = { .size = sizeof parsed };
        char text[64];
        size_t need = 0;
        int32_t exact = 0;
        same &= muslin_length_format(a, &spec, text, sizeof text, &need, &exact, NULL) == MUSLIN_OK;
        same &= muslin_length_parse(text, need - 1, &back, &parsed, NULL) == MUSLIN_OK;
        exact_ones += exact;
        same &= exact == (parsed.exact == 1 && parsed.value == a);
    }
    ck_assert(same);
    ck_assert_int_gt(exact_ones, 5000);
}
END_TEST

/* ---- buffers --------------------------------------------------------------------------------------------------- */

START_TEST(asking_writes_what_is_needed_and_succeeds)
{
    size_t need = 0;
    int32_t exact = 77;
    ck_ok(muslin_length_format(IN(2, 1, 2), NULL, NULL, 0, &need, &exact, NULL));
    ck_assert_uint_eq(need, sizeof "2 1/2 in");
    ck_assert_int_eq(exact, 1);
    ck_ok(muslin_length_format(IN(2, 1, 2), NULL, NULL, 0, NULL, NULL, NULL));
}
END_TEST

START_TEST(a_buffer_of_just_the_size_is_enough)
{
    char *text = malloc(sizeof "2 1/2 in"); /* on the heap, so that a byte too many is found */
    muslin_status status = muslin_length_format(IN(2, 1, 2), NULL, text, sizeof "2 1/2 in", NULL, NULL, NULL);
    int same = strcmp(text, "2 1/2 in") == 0;
    free(text);
    ck_ok(status);
    ck_assert(same);
}
END_TEST

START_TEST(a_buffer_too_small_stays_untouched_and_learns_its_size)
{
    for (size_t cap = 1; cap < sizeof "2 1/2 in"; cap++) {
        char text[16];
        char untouched[16];
        size_t need = 0;
        int32_t exact = 77;
        struct muslin_problem problem = PROBLEM;
        memset(text, 'x', sizeof text);
        memset(untouched, 'x', sizeof untouched);
        ck_status(muslin_length_format(IN(2, 1, 2), NULL, text, cap, &need, &exact, &problem), MUSLIN_ERR_BUFFER);
        ck_assert_mem_eq(text, untouched, sizeof text);
        ck_assert_uint_eq(need, sizeof "2 1/2 in");
        ck_assert_int_eq(exact, 77);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_BUFFER);
        ck_assert_int_eq(problem.value, (int64_t)cap);
        ck_assert_int_eq(problem.limit, (int64_t)sizeof "2 1/2 in");
    }
    char one[1] = { 'x' };
    ck_status(muslin_length_format(0, NULL, one, 1, NULL, NULL, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(one[0], 'x');
}
END_TEST

START_TEST(nothing_behind_the_terminator_is_written_in_any_buffer)
{
    for (size_t cap = sizeof "0 in"; cap < 80; cap++) {
        char text[80], untouched[80];
        memset(text, 'x', sizeof text);
        memset(untouched, 'x', sizeof untouched);
        ck_ok(muslin_length_format(0, NULL, text, cap, NULL, NULL, NULL));
        ck_assert_mem_eq(text, "0 in", sizeof "0 in");
        ck_assert_mem_eq(text + sizeof "0 in", untouched, sizeof text - sizeof "0 in");
    }
}
END_TEST

static void ck_format_refused(muslin_len a, const struct muslin_format_spec *spec, muslin_status status,
                              int32_t argument)
{
    char text[4] = "xyz";
    size_t need = 77;
    int32_t exact = 77;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_length_format(a, spec, text, sizeof text, &need, &exact, &problem), status);
    ck_assert_str_eq(text, "xyz");
    ck_assert(need == 77 && exact == 77);
    ck_assert_int_eq(problem.argument, argument);
}

START_TEST(a_missing_buffer_is_named)
{
    size_t need = 77;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_length_format(0, NULL, NULL, 64, &need, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BUFFER);
    ck_assert_uint_eq(need, 77);
}
END_TEST

START_TEST(a_length_outside_the_range_is_not_written)
{
    const muslin_len outside[] = { MUSLIN_LENGTH_MAX + 1, -MUSLIN_LENGTH_MAX - 1, INT64_MAX, INT64_MIN };
    for (size_t i = 0; i < COUNT(outside); i++)
        ck_format_refused(outside[i], NULL, MUSLIN_ERR_RANGE, MUSLIN_ARG_LENGTH);
}
END_TEST

START_TEST(members_of_a_format_out_of_range_are_refused_in_every_style)
{
    const int32_t denominators[] = { 0, 65, -1, INT32_MIN, INT32_MAX };
    const int32_t decimals[] = { -1, 7, INT32_MIN, INT32_MAX };
    for (int32_t style = MUSLIN_STYLE_INCH_FRACTION; style <= MUSLIN_STYLE_CM; style++) {
        for (size_t i = 0; i < COUNT(denominators); i++) {
            struct muslin_format_spec spec = format_of(style, 0, denominators[i], 4);
            ck_format_refused(0, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_DENOMINATOR);
        }
        for (size_t i = 0; i < COUNT(decimals); i++) {
            struct muslin_format_spec spec = format_of(style, 0, 64, decimals[i]);
            ck_format_refused(0, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_DECIMALS);
        }
    }
}
END_TEST

START_TEST(choices_of_writing_are_checked)
{
    const int32_t bad[] = { 0, 6, -1, INT32_MIN, INT32_MAX };
    for (size_t i = 0; i < COUNT(bad); i++) {
        struct muslin_format_spec spec = format_of(bad[i], 0, 64, 4);
        ck_format_refused(0, &spec, MUSLIN_ERR_CHOICE, MUSLIN_ARG_STYLE);
        spec = format_of(MUSLIN_STYLE_MM, 0, 64, 4);
        spec.direction = bad[i];
        ck_format_refused(0, &spec, MUSLIN_ERR_CHOICE, MUSLIN_ARG_DIRECTION);
        spec.direction = MUSLIN_DIRECTION_UP;
        spec.decimal_sign = bad[i];
        ck_format_refused(0, &spec, MUSLIN_ERR_CHOICE, MUSLIN_ARG_DECIMAL_SIGN);
    }
}
END_TEST

/* ---- cases ----------------------------------------------------------------------------------------------------- */

TCase *tcase_parse(void)
{
    TCase *parse = tcase_create("text in");
    tcase_add_test(parse, lengths_are_read_as_quilters_write_them);
    tcase_add_test(parse, decimals_of_a_conversion_table_are_its_fractions);
    tcase_add_test(parse, a_sign_holds_for_the_whole_text);
    tcase_add_test(parse, every_word_and_mark_of_a_unit_is_known_in_either_case);
    tcase_add_test(parse, every_vulgar_fraction_equals_its_two_numbers);
    tcase_add_test(parse, a_fraction_may_use_any_of_three_slashes);
    tcase_add_test(parse, every_blank_is_a_blank);
    tcase_add_test(parse, a_number_without_unit_takes_the_default_one);
    tcase_add_test(parse, the_unit_reported_is_that_of_the_last_part);
    tcase_add_test(parse, a_comma_is_the_decimal_sign_on_request);
    tcase_add_test(parse, a_text_off_the_grid_is_the_nearest_tick_and_says_so);
    tcase_add_test(parse, parts_are_summed_before_they_are_rounded);
    tcase_add_test(parse, zeros_that_say_nothing_change_nothing);
    tcase_add_test(parse, a_text_reaches_exactly_to_the_end_of_the_range);
    tcase_add_test(parse, a_text_beyond_the_range_is_an_overflow);
    tcase_add_test(parse, a_number_of_more_than_eighteen_digits_is_an_overflow);
    tcase_add_test(parse, fractions_without_a_common_denominator_in_range_are_an_overflow);
    tcase_add_test(parse, a_text_without_a_number_is_empty);
    tcase_add_test(parse, what_stands_in_place_of_a_number_is_named);
    tcase_add_test(parse, what_follows_a_whole_length_is_named_to_the_end);
    tcase_add_test(parse, a_word_that_is_no_unit_is_named_whole);
    tcase_add_test(parse, units_that_do_not_fall_are_refused);
    tcase_add_test(parse, the_other_decimal_sign_is_refused_never_guessed);
    tcase_add_test(parse, a_fraction_over_zero_is_refused);
    tcase_add_test(parse, bytes_that_are_no_utf8_are_named);
    tcase_add_test(parse, the_ends_of_each_length_of_utf8_are_valid);
    tcase_add_test(parse, the_sentence_quotes_what_is_wrong);
    tcase_add_test(parse, a_long_quotation_is_cut_short);
    tcase_add_test(parse, all_texts_of_up_to_five_signs_are_read_or_refused_as_the_grammar_says);
    tcase_add_test(parse, reading_keeps_the_rules_of_structs);
    tcase_add_test(parse, a_missing_text_is_named);
    tcase_add_test(parse, choices_of_reading_are_checked);
    return parse;
}

TCase *tcase_format(void)
{
    TCase *format = tcase_create("text out");
    tcase_add_test(format, inches_are_written_with_fractions_in_lowest_terms);
    tcase_add_test(format, a_length_between_two_fractions_is_written_as_the_nearest_and_says_so);
    tcase_add_test(format, up_and_down_hold_for_negative_lengths_too);
    tcase_add_test(format, decimals_are_written_without_zeros_at_the_end);
    tcase_add_test(format, an_inch_is_25_4_mm_and_a_yard_91_44_cm);
    tcase_add_test(format, yards_are_written_with_the_fractions_of_the_cutting_counter);
    tcase_add_test(format, unicode_has_vulgar_fractions_a_fraction_slash_and_a_minus);
    tcase_add_test(format, a_bare_length_has_no_unit);
    tcase_add_test(format, a_decimal_comma_is_written_on_request);
    tcase_add_test(format, the_longest_texts_stay_under_64_bytes);
    tcase_add_test(format, the_ends_of_the_range_are_written);
    tcase_add_test(format, what_is_written_exactly_reads_back_the_same);
    tcase_add_test(format, asking_writes_what_is_needed_and_succeeds);
    tcase_add_test(format, a_buffer_of_just_the_size_is_enough);
    tcase_add_test(format, a_buffer_too_small_stays_untouched_and_learns_its_size);
    tcase_add_test(format, nothing_behind_the_terminator_is_written_in_any_buffer);
    tcase_add_test(format, a_missing_buffer_is_named);
    tcase_add_test(format, a_length_outside_the_range_is_not_written);
    tcase_add_test(format, members_of_a_format_out_of_range_are_refused_in_every_style);
    tcase_add_test(format, choices_of_writing_are_checked);
    tcase_add_test(format, writing_keeps_the_rules_of_structs);
    tcase_add_test(format, initial_values_of_text_are_those_of_the_macros);
    tcase_add_test(format, a_null_spec_means_the_initial_one);
    return format;
}
