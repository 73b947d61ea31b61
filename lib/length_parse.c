/* length_parse.c - lengths read from text.
 *
 * SPDX-License-Identifier: MIT
 *
 * The grammar stands in muslin/length.h. The whole text is checked to be UTF-8 first; after that a reader walks it from
 * left to right and adds up an exact rational, which is rounded once at the end. */
#include "wide.h"

/* Digits that one number may have, zeros at its outer ends not counted: 10^18 is below 2^60, so the sums below fit. */
enum { DIGITS_MAX = 18 };

struct reader {
    const char *text;
    size_t at;
    size_t end;
    int32_t decimal_sign;
    struct msl_check *check;
};

/* whole + above / below, 0 <= above < below. */
struct exact {
    int64_t whole;
    int64_t above;
    int64_t below;
};

static muslin_status fail_at(struct reader *reader, muslin_status status, size_t at, size_t length)
{
    reader->check->at = (int64_t)at;
    return msl_fail_text(reader->check, status, reader->text, (int64_t)length);
}

/* ---- characters -------------------------------------------------------------------------------------------------- */

/* Bytes of the UTF-8 character that starts with this byte, not an ASCII one; 0 for a byte that starts none. */
static size_t bytes_of_lead(unsigned char lead)
{
    if (lead >= 0xC2 && lead <= 0xDF)
        return 2;
    if (lead >= 0xE0 && lead <= 0xEF)
        return 3;
    if (lead >= 0xF0 && lead <= 0xF4)
        return 4;
    return 0;
}

/* A character of several bytes. */
static uint32_t decode_long(const char *text, size_t at, size_t end, size_t *bytes)
{
    static const unsigned char lead_mask[5] = { 0, 0, 0x1F, 0x0F, 0x07 };
    static const uint32_t least[5] = { 0, 0, 0x80, 0x800, 0x10000 };
    unsigned char lead = (unsigned char)text[at];
    size_t count = bytes_of_lead(lead);
    *bytes = 0;
    if (count == 0 || count > end - at)
        return 0;
    uint32_t character = lead & lead_mask[count];
    for (size_t i = 1; i < count; i++) {
        unsigned char next = (unsigned char)text[at + i];
        if ((next & 0xC0) != 0x80)
            return 0;
        character = character << 6 | (next & 0x3F);
    }
    if (character < least[count] || character > 0x10FFFF)
        return 0;
    if (character >= 0xD800 && character <= 0xDFFF)
        return 0;
    *bytes = count;
    return character;
}

/* The character at `at`, and its bytes; *bytes becomes 0 where the text is not UTF-8 (RFC 3629: no overlong forms, no
 * surrogates, nothing above U+10FFFF). Nearly all texts are ASCII alone. */
static uint32_t decode(const char *text, size_t at, size_t end, size_t *bytes)
{
    unsigned char lead = (unsigned char)text[at];
    *bytes = 1;
    return lead < 0x80 ? lead : decode_long(text, at, end, bytes);
}

/* The character under the reader, 0 at the end. */
static uint32_t peek(const struct reader *reader, size_t *bytes)
{
    *bytes = 0;
    if (reader->at == reader->end)
        return 0;
    return decode(reader->text, reader->at, reader->end, bytes);
}

static void want_utf8(struct reader *reader)
{
    size_t bytes = 0;
    for (size_t at = 0; at < reader->end; at += bytes) {
        decode(reader->text, at, reader->end, &bytes);
        if (bytes == 0) {
            fail_at(reader, MUSLIN_ERR_TEXT_ENCODING, at, 1);
            return;
        }
    }
}

static int is_blank(uint32_t c)
{
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == 0xA0 || c == 0x202F || c == 0x2009;
}

static int is_digit(uint32_t c)
{
    return c >= '0' && c <= '9';
}

/* Letters of other alphabets too (U+00C0 .. U+1FFF): they spell no unit, but they are a word. */
static int is_letter(uint32_t c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= 0xC0 && c < 0x2000);
}

static int is_slash(uint32_t c)
{
    return c == '/' || c == 0x2044 || c == 0x2215;
}

static void skip_blanks(struct reader *reader)
{
    size_t bytes;
    while (is_blank(peek(reader, &bytes)))
        reader->at += bytes;
}

/* ---- numbers ----------------------------------------------------------------------------------------------------- */

/* The fractions with a character of their own: Unicode, Latin-1 Supplement and Number Forms. In order. */
static const struct vulgar {
    uint16_t character;
    unsigned char above;
    unsigned char below;
} vulgars[] = {
    { 0xBC, 1, 4 },   { 0xBD, 1, 2 },   { 0xBE, 3, 4 },    { 0x2150, 1, 7 }, { 0x2151, 1, 9 },
    { 0x2152, 1, 10 }, { 0x2153, 1, 3 }, { 0x2154, 2, 3 }, { 0x2155, 1, 5 }, { 0x2156, 2, 5 },
    { 0x2157, 3, 5 }, { 0x2158, 4, 5 }, { 0x2159, 1, 6 },  { 0x215A, 5, 6 }, { 0x215B, 1, 8 },
    { 0x215C, 3, 8 }, { 0x215D, 5, 8 }, { 0x215E, 7, 8 },  { 0x2189, 0, 3 },
};

/* Its row in the list, or a negative number. */
static int vulgar_row(uint32_t c)
{
    if (c < vulgars[0].character)
        return -1;
    for (int i = 0; i < (int)(sizeof vulgars / sizeof vulgars[0]); i++)
        if (vulgars[i].character == c)
            return i;
    return -1;
}

/* A digit, a decimal sign before a digit, or a vulgar fraction. */
static int starts_number(const struct reader *reader)
{
    size_t bytes;
    uint32_t c = peek(reader, &bytes);
    if (c != (uint32_t)reader->decimal_sign)
        return is_digit(c) || vulgar_row(c) >= 0;
    size_t next = reader->at + bytes;
    return next < reader->end && is_digit((unsigned char)reader->text[next]);
}

/* Moves past the digits under the reader. */
static void skip_digits(struct reader *reader)
{
    while (reader->at < reader->end && is_digit((unsigned char)reader->text[reader->at]))
        reader->at++;
}

/* The number that the digits from `first` to before `last` spell; 0 where there are none. */
static int64_t value_of_digits(struct reader *reader, size_t first, size_t last)
{
    int64_t number = 0;
    if (last - first > DIGITS_MAX) {
        fail_at(reader, MUSLIN_ERR_OVERFLOW, first, last - first);
        return 0;
    }
    for (size_t i = first; i < last; i++)
        number = number * 10 + (reader->text[i] - '0');
    return number;
}

/* The whole number under the reader; 0 where no digit stands. */
static int64_t read_whole(struct reader *reader)
{
    size_t first = reader->at;
    skip_digits(reader);
    while (first < reader->at && reader->text[first] == '0')
        first++;
    return value_of_digits(reader, first, reader->at);
}

/* A digit must stand here. */
static void want_digit(struct reader *reader)
{
    size_t bytes;
    if (!is_digit(peek(reader, &bytes)))
        fail_at(reader, MUSLIN_ERR_TEXT_SYNTAX, reader->at, bytes);
}

/* The digits behind a decimal sign. Zeros at their end say nothing, so there may be many. */
static void read_decimals(struct reader *reader, struct exact *number)
{
    size_t first = reader->at;
    want_digit(reader);
    skip_digits(reader);
    size_t last = reader->at;
    while (last > first && reader->text[last - 1] == '0')
        last--;
    number->above = value_of_digits(reader, first, last);
    if (reader->check->status != MUSLIN_OK)
        return;
    for (size_t i = first; i < last; i++)
        number->below *= 10;
}

/* A slash and what stands below it, for a number above the line that has been read. */
static void read_denominator(struct reader *reader, int64_t above, struct exact *number)
{
    size_t bytes;
    peek(reader, &bytes);
    reader->at += bytes;
    size_t first = reader->at;
    want_digit(reader);
    int64_t below = read_whole(reader);
    if (below == 0)
        fail_at(reader, MUSLIN_ERR_TEXT_ZERO_DENOMINATOR, first, reader->at - first);
    if (reader->check->status != MUSLIN_OK)
        return;
    number->whole += above / below;
    number->above = above % below;
    number->below = below;
}

/* A vulgar fraction under the reader, if there is one: added, and 1 returned. */
static int read_vulgar(struct reader *reader, struct exact *number)
{
    size_t bytes;
    int row = vulgar_row(peek(reader, &bytes));
    if (row < 0)
        return 0;
    reader->at += bytes;
    number->above = vulgars[row].above;
    number->below = vulgars[row].below;
    return 1;
}

/* The fraction of a mixed number: "1/2" behind blanks or one hyphen, or a vulgar one. Where none follows, the reader
 * stays where it was. */
static void read_mixed_fraction(struct reader *reader, struct exact *number)
{
    struct reader ahead = *reader;
    size_t bytes;
    skip_blanks(&ahead);
    if (ahead.at == reader->at && peek(&ahead, &bytes) == '-')
        ahead.at += bytes;
    size_t first = ahead.at;
    if (read_vulgar(&ahead, number)) {
        reader->at = ahead.at;
        return;
    }
    skip_digits(&ahead);
    if (ahead.at == first || !is_slash(peek(&ahead, &bytes)))
        return;
    reader->at = first;
    int64_t above = read_whole(reader);
    read_denominator(reader, above, number);
}

static struct exact read_number(struct reader *reader)
{
    struct exact number = { 0, 0, 1 };
    size_t bytes;
    if (read_vulgar(reader, &number))
        return number;
    int64_t whole = read_whole(reader);
    uint32_t next = peek(reader, &bytes);
    if (is_slash(next)) {
        read_denominator(reader, whole, &number);
        return number;
    }
    number.whole = whole;
    if (next == (uint32_t)reader->decimal_sign) {
        reader->at += bytes;
        read_decimals(reader, &number);
        return number;
    }
    read_mixed_fraction(reader, &number);
    return number;
}

/* The other decimal sign is refused with its place, never guessed at. */
static void refuse_other_sign(struct reader *reader)
{
    size_t bytes;
    uint32_t c = peek(reader, &bytes);
    if ((c == '.' || c == ',') && c != (uint32_t)reader->decimal_sign)
        fail_at(reader, MUSLIN_ERR_TEXT_DECIMAL, reader->at, bytes);
}

/* ---- units ------------------------------------------------------------------------------------------------------- */

enum { UNIT_WORD_MAX = 12 };

static const struct unit_word {
    char word[UNIT_WORD_MAX];
    unsigned char unit;
    unsigned char may_have_point; /* as an abbreviation: "in." */
} unit_words[] = {
    { "in", MUSLIN_LENGTH_UNIT_INCH, 1 },              { "inch", MUSLIN_LENGTH_UNIT_INCH, 0 },
    { "inches", MUSLIN_LENGTH_UNIT_INCH, 0 },          { "ft", MUSLIN_LENGTH_UNIT_FOOT, 1 },
    { "foot", MUSLIN_LENGTH_UNIT_FOOT, 0 },            { "feet", MUSLIN_LENGTH_UNIT_FOOT, 0 },
    { "yd", MUSLIN_LENGTH_UNIT_YARD, 1 },              { "yds", MUSLIN_LENGTH_UNIT_YARD, 1 },
    { "yard", MUSLIN_LENGTH_UNIT_YARD, 0 },            { "yards", MUSLIN_LENGTH_UNIT_YARD, 0 },
    { "mm", MUSLIN_LENGTH_UNIT_MM, 0 },                { "millimetre", MUSLIN_LENGTH_UNIT_MM, 0 },
    { "millimetres", MUSLIN_LENGTH_UNIT_MM, 0 },       { "millimeter", MUSLIN_LENGTH_UNIT_MM, 0 },
    { "millimeters", MUSLIN_LENGTH_UNIT_MM, 0 },       { "cm", MUSLIN_LENGTH_UNIT_CM, 0 },
    { "centimetre", MUSLIN_LENGTH_UNIT_CM, 0 },        { "centimetres", MUSLIN_LENGTH_UNIT_CM, 0 },
    { "centimeter", MUSLIN_LENGTH_UNIT_CM, 0 },        { "centimeters", MUSLIN_LENGTH_UNIT_CM, 0 },
    { "m", MUSLIN_LENGTH_UNIT_M, 0 },                  { "metre", MUSLIN_LENGTH_UNIT_M, 0 },
    { "metres", MUSLIN_LENGTH_UNIT_M, 0 },             { "meter", MUSLIN_LENGTH_UNIT_M, 0 },
    { "meters", MUSLIN_LENGTH_UNIT_M, 0 },
};

/* Do these letters, in either case, spell the word? It ends with a zero byte, so the loop stops within it. */
static int spells(const char *text, size_t at, size_t length, const char *word)
{
    for (size_t i = 0; i < length; i++)
        if ((text[at + i] | 0x20) != word[i])
            return 0;
    return word[length] == 0;
}

/* A mark for inches or feet, or 0. */
static int32_t unit_of_mark(uint32_t c)
{
    if (c == '"' || c == 0x2033 || c == 0x201D || c == 0x201C)
        return MUSLIN_LENGTH_UNIT_INCH;
    if (c == '\'' || c == 0x2032 || c == 0x2019 || c == 0x2018)
        return MUSLIN_LENGTH_UNIT_FOOT;
    return 0;
}

/* A unit in letters; 0 and a failure where the word is none. */
static int32_t read_unit_word(struct reader *reader)
{
    size_t start = reader->at;
    size_t bytes;
    while (is_letter(peek(reader, &bytes)))
        reader->at += bytes;
    for (size_t i = 0; i < sizeof unit_words / sizeof unit_words[0]; i++) {
        if (!spells(reader->text, start, reader->at - start, unit_words[i].word))
            continue;
        if (unit_words[i].may_have_point && peek(reader, &bytes) == '.')
            reader->at += bytes;
        return unit_words[i].unit;
    }
    fail_at(reader, MUSLIN_ERR_TEXT_UNIT, start, reader->at - start);
    return 0;
}

/* The unit under the reader; 0 where none is named. */
static int32_t read_unit(struct reader *reader)
{
    size_t bytes;
    uint32_t c = peek(reader, &bytes);
    if (is_letter(c))
        return read_unit_word(reader);
    int32_t unit = unit_of_mark(c);
    if (unit != 0)
        reader->at += bytes;
    if (unit != MUSLIN_LENGTH_UNIT_FOOT || peek(reader, &bytes) != c)
        return unit;
    reader->at += bytes; /* the mark for feet written twice means inches */
    return MUSLIN_LENGTH_UNIT_INCH;
}

/* ---- the sum of the parts ---------------------------------------------------------------------------------------- */

/* number x ticks, in whole ticks and a fraction of one. Returns 0 where it passes the range. The fraction adds less
 * than a unit, so the sum cannot wrap. */
static int in_ticks(struct exact number, int64_t ticks, struct exact *out)
{
    int64_t part;
    if (number.whole > MUSLIN_LENGTH_MAX / ticks)
        return 0;
    (void)msl_wide_floor(msl_wide_multiply(number.above, ticks), number.below, &part, &out->above);
    out->whole = number.whole * ticks + part;
    out->below = number.below;
    return out->whole <= MUSLIN_LENGTH_MAX;
}

static struct exact in_lowest_terms(struct exact a)
{
    int64_t divisor = msl_common_divisor(a.below, a.above);
    a.above /= divisor;
    a.below /= divisor;
    return a;
}

/* a + b, both with a fraction of a tick; wholes left out. Returns 0 where the common denominator passes its range. */
static int add_fractions(struct exact a, struct exact b, struct exact *out)
{
    a = in_lowest_terms(a);
    b = in_lowest_terms(b);
    int64_t divisor = msl_common_divisor(a.below, b.below);
    int64_t times = b.below / divisor;
    if (a.below > MUSLIN_LENGTH_MAX / times)
        return 0;
    out->below = a.below * times;
    out->above = a.above * times + b.above * (a.below / divisor);
    return 1;
}

/* a + b. Returns 0 where the common denominator, or the sum, passes its range. The first part, and most others, have no
 * fraction to be added to. */
static int add_exact(struct exact a, struct exact b, struct exact *out)
{
    struct exact sum = b;
    if (a.above != 0 && !add_fractions(a, b, &sum))
        return 0;
    out->whole = a.whole + b.whole + sum.above / sum.below;
    out->above = sum.above % sum.below;
    out->below = sum.below;
    return out->whole <= MUSLIN_LENGTH_MAX;
}

struct parts {
    struct exact sum;
    int32_t default_unit;
    int32_t unit; /* of the last part, 0 before the first */
};

/* Units go from larger to smaller. */
static int is_falling(const struct parts *parts, int32_t unit)
{
    return parts->unit == 0 || muslin_length_unit_ticks(unit) < muslin_length_unit_ticks(parts->unit);
}

/* One part: a number and, unless the text ends there, its unit. */
static void read_part(struct reader *reader, struct parts *parts)
{
    struct exact part;
    size_t start = reader->at;
    struct exact number = read_number(reader);
    refuse_other_sign(reader);
    size_t end = reader->at;
    skip_blanks(reader);
    size_t unit_start = reader->at;
    int32_t named = read_unit(reader);
    int32_t unit = named != 0 ? named : parts->default_unit;
    if (named == 0 && reader->at != reader->end)
        fail_at(reader, MUSLIN_ERR_TEXT_TRAILING, reader->at, reader->end - reader->at);
    if (!is_falling(parts, unit)) /* the unit is wrong, or the number that takes the default one */
        fail_at(reader, MUSLIN_ERR_TEXT_UNIT, named != 0 ? unit_start : start,
                named != 0 ? reader->at - unit_start : end - start);
    if (reader->check->status != MUSLIN_OK)
        return;
    if (!in_ticks(number, muslin_length_unit_ticks(unit), &part) || !add_exact(parts->sum, part, &parts->sum))
        fail_at(reader, MUSLIN_ERR_OVERFLOW, start, end - start);
    parts->unit = unit;
    skip_blanks(reader);
}

/* The sign, if one stands here: 1 for minus. */
static int read_sign(struct reader *reader)
{
    size_t bytes;
    uint32_t c = peek(reader, &bytes);
    int minus = c == '-' || c == 0x2212;
    if (minus || c == '+')
        reader->at += bytes;
    return minus;
}

/* No number stands where one must. */
static void refuse_no_number(struct reader *reader)
{
    size_t bytes;
    peek(reader, &bytes);
    refuse_other_sign(reader);
    fail_at(reader, reader->at == reader->end ? MUSLIN_ERR_TEXT_EMPTY : MUSLIN_ERR_TEXT_SYNTAX, reader->at, bytes);
}

static void read_parts(struct reader *reader, struct parts *parts)
{
    int more = starts_number(reader);
    if (!more)
        refuse_no_number(reader);
    while (more) {
        read_part(reader, parts);
        more = reader->check->status == MUSLIN_OK && starts_number(reader);
    }
    if (reader->at != reader->end)
        fail_at(reader, MUSLIN_ERR_TEXT_TRAILING, reader->at, reader->end - reader->at);
}

/* The sum with its sign, to the nearest tick, ties upwards. */
static struct muslin_parsed rounded(const struct parts *parts, int minus)
{
    struct muslin_parsed result = { 0 };
    struct exact sum = parts->sum;
    int64_t missing = sum.below - sum.above;
    int away = minus ? sum.above > missing : sum.above >= missing;
    int64_t nearest = sum.whole + (away ? 1 : 0);
    result.value = minus ? -nearest : nearest;
    result.exact = sum.above == 0;
    result.unit = parts->unit;
    return result;
}

muslin_status muslin_parse_spec_init(struct muslin_parse_spec *spec, uint32_t size)
{
    const struct muslin_parse_spec initial = MUSLIN_PARSE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_spec(struct msl_check *check, struct muslin_parse_spec *into, const struct muslin_parse_spec *from)
{
    const struct muslin_parse_spec initial = MUSLIN_PARSE_SPEC_INIT;
    *into = initial;
    if (from == NULL)
        return;
    msl_read_struct(check, MUSLIN_ARG_SPEC, into, (uint32_t)sizeof *into, (uint32_t)sizeof *into, 0, from);
    if (check->status != MUSLIN_OK)
        return;
    msl_want_choice(check, MUSLIN_ARG_UNIT, into->default_unit, MUSLIN_LENGTH_UNIT_INCH, MUSLIN_LENGTH_UNIT_M);
    msl_want_decimal_sign(check, into->decimal_sign);
}

/* The text itself, known to be UTF-8. */
static struct muslin_parsed read_text(struct reader *reader, int32_t default_unit)
{
    struct parts parts = { { 0, 0, 1 }, default_unit, 0 };
    skip_blanks(reader);
    int minus = read_sign(reader);
    skip_blanks(reader);
    size_t start = reader->at;
    read_parts(reader, &parts);
    struct muslin_parsed result = rounded(&parts, minus);
    if (result.value > MUSLIN_LENGTH_MAX || result.value < -MUSLIN_LENGTH_MAX)
        fail_at(reader, MUSLIN_ERR_OVERFLOW, start, reader->end - start);
    return result;
}

muslin_status muslin_length_parse(const char *text, size_t bytes, const struct muslin_parse_spec *spec,
                                  struct muslin_parsed *out, struct muslin_problem *problem)
{
    struct muslin_parse_spec how;
    struct msl_check check = msl_check_start(problem);
    read_spec(&check, &how, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (bytes != 0)
        msl_want_pointer(&check, MUSLIN_ARG_TEXT, text);
    struct reader reader = { text, 0, bytes, how.decimal_sign, &check };
    if (check.status == MUSLIN_OK)
        want_utf8(&reader);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_parsed result = read_text(&reader, how.default_unit);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}
