/* length_parse.c - lengths read from text.
 *
 * SPDX-License-Identifier: MIT
 *
 * The grammar stands in muslin/length.h. A reader walks the text from left to right and adds up an exact rational,
 * which is rounded once at the end. */
#include "wide.h"

/* Digits that one number may have, zeros at its outer ends not counted: 10^18 is below 2^60, so the sums below fit. */
enum { DIGITS_MAX = 18 };

/* What a character means in the grammar. Point and comma are called by what a spec calls a decimal sign. */
enum kind {
    KIND_OTHER = '!',
    KIND_END = '$',
    KIND_BLANK = '_',
    KIND_DIGIT = '0',
    KIND_LETTER = 'a',
    KIND_PLUS = '+',
    KIND_MINUS = '-',
    KIND_POINT = '.',
    KIND_COMMA = ',',
    KIND_SLASH = '/',
    KIND_VULGAR = '%',
    KIND_INCH_MARK = '"',
    KIND_FOOT_MARK = '\''
};

struct character {
    uint32_t code; /* Unicode's */
    enum kind kind;
    size_t bytes;
};

struct reader {
    const char *text;
    size_t at;
    size_t end;
    struct character under; /* the one at `at` */
    enum kind decimal_sign;
    muslin_status status; /* the first failure, with its place */
    size_t wrong_at;
    size_t wrong_bytes;
};

/* whole + above / below, none of them negative, below not 0. */
struct exact {
    int64_t whole;
    int64_t above;
    int64_t below;
};

/*@ // A reader's text and its place of a failure.
  @ predicate has_text(struct reader *r) = \valid(r) && r->end <= INT64_MAX &&
  @         \valid_read(r->text + (0 .. r->end - 1)) &&
  @         (r->decimal_sign == KIND_POINT || r->decimal_sign == KIND_COMMA) &&
  @         (r->status != MUSLIN_OK ==> r->wrong_at <= r->end && r->wrong_bytes <= r->end - r->wrong_at);
  @ predicate is_told(integer n) = 0 <= n < 1000000000000000000; // by DIGITS_MAX digits
  @ predicate is_number(struct exact a) = is_told(a.whole) && is_told(a.above) && is_told(a.below - 1);
  @ predicate is_sum(struct exact a) =
  @         0 <= a.whole <= MUSLIN_LENGTH_MAX && 0 <= a.above < a.below <= MUSLIN_LENGTH_MAX;
  @ predicate is_carried(struct exact a) = // a sum, or one tick more
  @         0 <= a.whole <= MUSLIN_LENGTH_MAX + 1 && 0 <= a.above < a.below <= MUSLIN_LENGTH_MAX; */

/* ---- characters -------------------------------------------------------------------------------------------------- */

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

/*@ predicate is_vulgar(integer c) = \exists integer i; 0 <= i < 19 && vulgars[i].character == c; */

/* Its row in the list, or a negative number. */
/*@ assigns \nothing;
  @ ensures -1 <= \result < 19 && (is_vulgar(c) <==> 0 <= \result) && (c < 0x80 ==> \result < 0);
  @ ensures 0 <= \result ==> vulgars[\result].character == c && 0 < vulgars[\result].below; */
static int vulgar_row(uint32_t c)
{
    if (c < vulgars[0].character)
        return -1;
    /*@ loop invariant 0 <= i <= 19 && \forall integer k; 0 <= k < i ==> vulgars[k].character != c;
      @ loop assigns i;
      @ loop variant 19 - i; */
    for (int i = 0; i < (int)(sizeof vulgars / sizeof vulgars[0]); i++)
        if (vulgars[i].character == c)
            return i;
    return -1;
}

/* The kinds of the 128 characters of ASCII. */
static const char kinds[129] = "!!!!!!!!!__!!_!!!!!!!!!!!!!!!!!!"
                               "_!\"!!!!'!!!+,-./0000000000!!!!!!"
                               "!aaaaaaaaaaaaaaaaaaaaaaaaaa!!!!!"
                               "!aaaaaaaaaaaaaaaaaaaaaaaaaa!!!!!";

/* Letters of other alphabets (U+00C0 .. U+1FFF) spell no unit, but they are a word. */
/*@ assigns \nothing;
  @ ensures \result == KIND_VULGAR || \result == KIND_LETTER || \result == KIND_OTHER;
  @ ensures \result == KIND_VULGAR ==> is_vulgar(code);
  @ ensures code < 0x80 ==> \result == KIND_OTHER; */
static enum kind kind_of_other(uint32_t code)
{
    if (vulgar_row(code) >= 0)
        return KIND_VULGAR;
    return code >= 0xC0 && code < 0x2000 ? KIND_LETTER : KIND_OTHER;
}

/* The kinds of all others. */
/*@ assigns \nothing;
  @ ensures \result != KIND_DIGIT && \result != KIND_POINT && \result != KIND_COMMA && \result != KIND_END;
  @ ensures \result == KIND_VULGAR ==> is_vulgar(code);
  @ ensures code < 0x80 ==> \result == KIND_OTHER; */
static enum kind kind_beyond_ascii(uint32_t code)
{
    switch (code) {
    case 0xA0:
    case 0x2009:
    case 0x202F:
        return KIND_BLANK;
    case 0x2212:
        return KIND_MINUS;
    case 0x2044:
    case 0x2215:
        return KIND_SLASH;
    case 0x201C:
    case 0x201D:
    case 0x2033:
        return KIND_INCH_MARK;
    case 0x2018:
    case 0x2019:
    case 0x2032:
        return KIND_FOOT_MARK;
    default:
        break;
    }
    return kind_of_other(code);
}

/* Bytes of the UTF-8 character that starts with this byte, not an ASCII one; 0 for a byte that starts none. */
/*@ assigns \nothing;
  @ ensures 0 <= \result <= 4; */
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

/*@ requires \valid(reader);
  @ assigns reader->under;
  @ ensures reader->under.code == code && reader->under.kind == kind && reader->under.bytes == bytes; */
static inline void put_under(struct reader *reader, uint32_t code, enum kind kind, size_t bytes)
{
    reader->under.code = code;
    reader->under.kind = kind;
    reader->under.bytes = bytes;
}

/*@ predicate has_digit(char *text, integer at, integer end) = at < end && '0' <= text[at] <= '9';
  @ predicate is_ascii(struct reader *r) = (unsigned char)r->text[r->at] < 0x80;
  @ // What stands under a reader, as far as its steps rely on it.
  @ predicate looks(struct reader *r) = r->at <= r->end && r->under.bytes <= r->end - r->at &&
  @         (r->at == r->end ==> r->under.kind == KIND_END) &&
  @         (r->at < r->end && is_ascii(r) ==>
  @             r->under.kind == kinds[(unsigned char)r->text[r->at]] && r->under.bytes == 1) &&
  @         (r->at < r->end && !is_ascii(r) ==> r->under.kind != KIND_DIGIT && r->under.kind != r->decimal_sign) &&
  @         (r->under.kind == KIND_DIGIT ==> has_digit(r->text, r->at, r->end)) &&
  @         (r->under.kind == KIND_VULGAR ==> is_vulgar(r->under.code)) &&
  @         (r->under.bytes == 0 ==> r->under.kind == KIND_END || r->under.kind == KIND_OTHER);
  @ predicate is_reading(struct reader *r) = has_text(r) && looks(r); */

/* Keeps the first failure: `length` bytes at `at`. */
/*@ requires has_text(reader) && status != MUSLIN_OK && at <= reader->end && length <= reader->end - at;
  @ assigns reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures has_text(reader) && reader->status != MUSLIN_OK && (\old(looks(reader)) ==> looks(reader)); */
static void fail_at(struct reader *reader, muslin_status status, size_t at, size_t length)
{
    if (reader->status != MUSLIN_OK)
        return;
    reader->status = status;
    reader->wrong_at = at;
    reader->wrong_bytes = length;
}

/* Looks at a character of several bytes. */
/*@ requires has_text(reader) && reader->at < reader->end && !is_ascii(reader);
  @ assigns reader->under;
  @ ensures is_reading(reader); */
static void decode_long(struct reader *reader)
{
    static const unsigned char lead_mask[] = { 0, 0, 0x1F, 0x0F, 0x07 };
    static const uint32_t least[] = { 0, 0, 0x80, 0x800, 0x10000 };
    const char *first = reader->text + reader->at;
    size_t bytes = bytes_of_lead((unsigned char)*first);
    put_under(reader, 0, KIND_OTHER, 0);
    if (bytes == 0 || bytes > reader->end - reader->at)
        return;
    uint32_t code = (unsigned char)*first & lead_mask[bytes];
    /*@ loop invariant 1 <= i <= bytes;
      @ loop assigns i, code;
      @ loop variant bytes - i; */
    for (size_t i = 1; i < bytes; i++) {
        unsigned char next = (unsigned char)first[i];
        if ((next & 0xC0) != 0x80)
            return;
        code = code << 6 | (next & 0x3F);
    }
    if (code < least[bytes] || code > 0x10FFFF)
        return;
    if (code >= 0xD800 && code <= 0xDFFF)
        return;
    put_under(reader, code, kind_beyond_ascii(code), bytes);
}

/* Moves to the character at `at`, or to the end. What is not UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing
 * above U+10FFFF) has no bytes, and no place in the grammar. Nearly all texts are ASCII alone. */
/*@ requires has_text(reader) && at <= reader->end;
  @ assigns reader->at, reader->under;
  @ ensures has_text(reader) && reader->at == at;
  @ ensures looks(reader); */
static inline void move_to(struct reader *reader, size_t at)
{
    reader->at = at;
    if (at == reader->end) {
        put_under(reader, 0, KIND_END, 0);
        return;
    }
    unsigned char lead = (unsigned char)reader->text[at];
    if (lead >= 0x80)
        decode_long(reader);
    else
        put_under(reader, lead, (enum kind)kinds[lead], 1);
    /*@ assert lead < 0x80 ==> kinds[lead] != KIND_VULGAR; */
    /*@ assert lead < 0x80 && kinds[lead] == KIND_DIGIT ==> '0' <= lead <= '9'; */
}

/* Moves past the character under the reader. */
/*@ requires is_reading(reader);
  @ assigns reader->at, reader->under;
  @ ensures is_reading(reader) && reader->at == \old(reader->at) + \old(reader->under.bytes); */
static void step(struct reader *reader)
{
    move_to(reader, reader->at + reader->under.bytes);
}

/* Moves past it if it is of this kind; returns whether it was. */
/*@ requires is_reading(reader) && kind != KIND_END && kind != KIND_OTHER;
  @ assigns reader->at, reader->under;
  @ ensures is_reading(reader);
  @ ensures \result != 0 <==> \old(reader->under.kind) == kind;
  @ ensures \result != 0 ==> \old(reader->at) < reader->at;
  @ ensures \result == 0 ==> reader->at == \old(reader->at) && reader->under == \old(reader->under); */
static int take(struct reader *reader, enum kind kind)
{
    if (reader->under.kind != kind)
        return 0;
    step(reader);
    return 1;
}

/*@ requires is_reading(reader);
  @ assigns reader->at, reader->under;
  @ ensures is_reading(reader) && reader->at >= \old(reader->at); */
static void skip_blanks(struct reader *reader)
{
    /*@ loop invariant is_reading(reader) && \at(reader->at, Pre) <= reader->at;
      @ loop assigns reader->at, reader->under;
      @ loop variant reader->end - reader->at; */
    while (take(reader, KIND_BLANK))
        ;
}

/* What a digit stands for; more than 9 where it is none. */
/*@ assigns \nothing;
  @ ensures \result <= 9 <==> '0' <= c <= '9'; */
static uint32_t digit_of(char c)
{
    return (uint32_t)(unsigned char)c - '0';
}

/* ---- numbers ----------------------------------------------------------------------------------------------------- */

/*@ predicate begins_number(struct reader *r) = r->under.kind == KIND_DIGIT || r->under.kind == KIND_VULGAR ||
  @         r->under.kind == r->decimal_sign; */

/* A digit, a decimal sign before a digit, or a vulgar fraction. */
/*@ requires is_reading(reader);
  @ assigns \nothing;
  @ ensures \result != 0 ==> begins_number(reader); */
static int starts_number(const struct reader *reader)
{
    size_t next = reader->at + 1;
    if (reader->under.kind == reader->decimal_sign)
        return next < reader->end && digit_of(reader->text[next]) <= 9;
    return reader->under.kind == KIND_DIGIT || reader->under.kind == KIND_VULGAR;
}

/* Digits of the text. */
struct run {
    size_t first;
    size_t last; /* behind them */
    int64_t value;
};

/* The digits from `first` on; what they spell is told of no more than DIGITS_MAX of them. */
/*@ requires first <= end <= INT64_MAX && \valid_read(text + (0 .. end - 1));
  @ assigns \nothing;
  @ ensures \result.first == first <= \result.last <= end && is_told(\result.value);
  @ ensures has_digit(text, first, end) ==> first < \result.last; */
static struct run run_from(const char *text, size_t first, size_t end)
{
    struct run run = { first, first, 0 };
    const size_t most = end - first > DIGITS_MAX ? first + DIGITS_MAX : end;
    /*@ loop invariant first <= run.last <= most && 0 <= run.value < ten_to(run.last - first);
      @ loop assigns run.last, run.value;
      @ loop variant most - run.last; */
    for (; run.last < most && digit_of(text[run.last]) <= 9; run.last++)
        run.value = run.value * 10 + digit_of(text[run.last]);
    /*@ loop invariant first <= run.last <= end && (has_digit(text, first, end) ==> first < run.last);
      @ loop assigns run.last;
      @ loop variant end - run.last; */
    while (run.last < end && digit_of(text[run.last]) <= 9)
        run.last++;
    return run;
}

/* All digits of a run must be told of. */
/*@ requires is_reading(reader) && \valid_read(run) && run->first <= run->last <= reader->end;
  @ assigns reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures is_reading(reader) && (reader->status == MUSLIN_OK ==> run->last - run->first <= DIGITS_MAX); */
static void want_all_told(struct reader *reader, const struct run *run)
{
    if (run->last - run->first > DIGITS_MAX)
        fail_at(reader, MUSLIN_ERR_OVERFLOW, run->first, run->last - run->first);
}

/* Digits must stand from `first` to before the reader. */
/*@ requires is_reading(reader);
  @ assigns reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures is_reading(reader) && (reader->status == MUSLIN_OK ==> reader->at != first); */
static void want_digits_from(struct reader *reader, size_t first)
{
    if (reader->at == first)
        fail_at(reader, MUSLIN_ERR_TEXT_SYNTAX, first, reader->under.bytes);
}

/* The digits of a whole number. Zeros before it say nothing, so there may be many. */
/*@ requires is_reading(reader) && first <= reader->end;
  @ assigns reader->at, reader->under;
  @ ensures is_reading(reader) && first <= \result.first <= \result.last == reader->at && is_told(\result.value);
  @ ensures has_digit(reader->text, first, reader->end) ==> first < reader->at; */
static struct run read_whole_run(struct reader *reader, size_t first)
{
    /*@ loop invariant \at(first, Pre) <= first <= reader->end;
      @ loop assigns first;
      @ loop variant reader->end - first; */
    while (first < reader->end && reader->text[first] == '0')
        first++;
    struct run run = run_from(reader->text, first, reader->end);
    move_to(reader, run.last);
    return run;
}

/*@ requires is_reading(reader) && first <= reader->end;
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures is_reading(reader) && first <= reader->at && is_told(\result);
  @ ensures has_digit(reader->text, first, reader->end) ==> first < reader->at; */
static int64_t read_whole(struct reader *reader, size_t first)
{
    struct run run = read_whole_run(reader, first);
    want_all_told(reader, &run);
    return run.value;
}

/* A decimal sign and the digits behind it. Zeros at their end say nothing either. */
/*@ requires is_reading(reader) && reader->under.kind == reader->decimal_sign;
  @ requires \valid(number) && \separated(reader, number) && is_number(*number) && number->below == 1;
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes, *number;
  @ ensures is_reading(reader) && is_number(*number);
  @ ensures \old(reader->at) < reader->at; */
static void read_decimals(struct reader *reader, struct exact *number)
{
    struct run run = run_from(reader->text, reader->at + 1, reader->end);
    move_to(reader, run.last);
    want_digits_from(reader, run.first);
    /*@ loop invariant run.first <= run.last <= reader->end;
      @ loop assigns run.last;
      @ loop variant run.last; */
    while (run.last - run.first > DIGITS_MAX && reader->text[run.last - 1] == '0')
        run.last--;
    want_all_told(reader, &run);
    if (reader->status != MUSLIN_OK)
        return;
    number->above = run.value;
    /*@ loop invariant run.first <= i <= run.last && number->below == ten_to(i - run.first);
      @ loop assigns i, number->below;
      @ loop variant run.last - i; */
    for (size_t i = run.first; i < run.last; i++)
        number->below *= 10;
}

/* A slash and what stands below it, for a number above the line that has been read. */
/*@ requires is_reading(reader) && is_told(above);
  @ requires \valid(number) && \separated(reader, number) && is_number(*number);
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes, *number;
  @ ensures is_reading(reader) && is_number(*number);
  @ ensures \old(reader->at) <= reader->at; */
static void read_denominator(struct reader *reader, int64_t above, struct exact *number)
{
    size_t first = reader->at + reader->under.bytes;
    int64_t below = read_whole(reader, first);
    want_digits_from(reader, first);
    if (below == 0)
        fail_at(reader, MUSLIN_ERR_TEXT_ZERO_DENOMINATOR, first, reader->at - first);
    if (reader->status != MUSLIN_OK)
        return;
    number->above = above;
    number->below = below;
}

/* A vulgar fraction under the reader, if there is one: added, and 1 returned. */
/*@ requires is_reading(reader);
  @ requires \valid(number) && \separated(reader, number) && is_number(*number);
  @ assigns reader->at, reader->under, *number;
  @ ensures is_reading(reader) && is_number(*number) && (\result != 0 <==> \old(reader->under.kind) == KIND_VULGAR);
  @ ensures \result != 0 ? \old(reader->at) < reader->at : \old(reader->at) == reader->at;
  @ ensures \result == 0 ==> reader->under == \old(reader->under) && *number == \old(*number); */
static int read_vulgar(struct reader *reader, struct exact *number)
{
    int row = vulgar_row(reader->under.code);
    if (!take(reader, KIND_VULGAR))
        return 0;
    number->above = vulgars[row].above;
    number->below = vulgars[row].below;
    return 1;
}

/* The fraction of a mixed number: "1/2" behind blanks or one hyphen, or a vulgar one. Where none follows, the reader
 * goes back to where it was. */
/*@ requires is_reading(reader);
  @ requires \valid(number) && \separated(reader, number) && is_number(*number);
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes, *number;
  @ ensures is_reading(reader) && is_number(*number);
  @ ensures \old(reader->at) <= reader->at; */
static void read_mixed_fraction(struct reader *reader, struct exact *number)
{
    const size_t back = reader->at;
    skip_blanks(reader);
    if (reader->at == back && reader->under.code == '-')
        step(reader);
    if (read_vulgar(reader, number))
        return;
    if (reader->under.kind == KIND_DIGIT) {
        struct run above = read_whole_run(reader, reader->at);
        if (reader->under.kind == KIND_SLASH) {
            want_all_told(reader, &above);
            read_denominator(reader, above.value, number);
            return;
        }
    }
    move_to(reader, back);
}

/* Into *number, which is 0. */
/*@ requires is_reading(reader) && begins_number(reader);
  @ requires \valid(number) && \separated(reader, number) && is_number(*number) && number->below == 1;
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes, *number;
  @ ensures is_reading(reader) && is_number(*number);
  @ ensures \old(reader->at) < reader->at; */
static void read_number(struct reader *reader, struct exact *number)
{
    if (read_vulgar(reader, number))
        return;
    int64_t whole = read_whole(reader, reader->at);
    /*@ assert \at(reader->at, Pre) < reader->at || reader->under.kind == reader->decimal_sign; */
    if (reader->under.kind == KIND_SLASH) {
        read_denominator(reader, whole, number);
        return;
    }
    number->whole = whole;
    if (reader->under.kind == reader->decimal_sign)
        read_decimals(reader, number);
    else
        read_mixed_fraction(reader, number);
}

/* The other decimal sign is refused with its place, never guessed at. */
/*@ requires is_reading(reader);
  @ assigns reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures is_reading(reader); */
static void refuse_other_sign(struct reader *reader)
{
    enum kind kind = reader->under.kind;
    if ((kind == KIND_POINT || kind == KIND_COMMA) && kind != reader->decimal_sign)
        fail_at(reader, MUSLIN_ERR_TEXT_DECIMAL, reader->at, reader->under.bytes);
}

/* ---- units ------------------------------------------------------------------------------------------------------- */

enum { UNIT_WORD_MAX = 12 };

/* The usual ones come first. */
static const struct unit_word {
    char word[UNIT_WORD_MAX];
    unsigned char unit;
    unsigned char may_have_point; /* as an abbreviation: "in." */
} unit_words[] = {
    { "in", MUSLIN_LENGTH_UNIT_INCH, 1 },              { "cm", MUSLIN_LENGTH_UNIT_CM, 0 },
    { "mm", MUSLIN_LENGTH_UNIT_MM, 0 },                { "yd", MUSLIN_LENGTH_UNIT_YARD, 1 },
    { "ft", MUSLIN_LENGTH_UNIT_FOOT, 1 },              { "m", MUSLIN_LENGTH_UNIT_M, 0 },
    { "inch", MUSLIN_LENGTH_UNIT_INCH, 0 },            { "inches", MUSLIN_LENGTH_UNIT_INCH, 0 },
    { "foot", MUSLIN_LENGTH_UNIT_FOOT, 0 },            { "feet", MUSLIN_LENGTH_UNIT_FOOT, 0 },
    { "yds", MUSLIN_LENGTH_UNIT_YARD, 1 },             { "yard", MUSLIN_LENGTH_UNIT_YARD, 0 },
    { "yards", MUSLIN_LENGTH_UNIT_YARD, 0 },           { "millimetre", MUSLIN_LENGTH_UNIT_MM, 0 },
    { "millimetres", MUSLIN_LENGTH_UNIT_MM, 0 },       { "millimeter", MUSLIN_LENGTH_UNIT_MM, 0 },
    { "millimeters", MUSLIN_LENGTH_UNIT_MM, 0 },       { "centimetre", MUSLIN_LENGTH_UNIT_CM, 0 },
    { "centimetres", MUSLIN_LENGTH_UNIT_CM, 0 },       { "centimeter", MUSLIN_LENGTH_UNIT_CM, 0 },
    { "centimeters", MUSLIN_LENGTH_UNIT_CM, 0 },       { "metre", MUSLIN_LENGTH_UNIT_M, 0 },
    { "metres", MUSLIN_LENGTH_UNIT_M, 0 },             { "meter", MUSLIN_LENGTH_UNIT_M, 0 },
    { "meters", MUSLIN_LENGTH_UNIT_M, 0 },
};

/*@ predicate is_unit(integer unit) = MUSLIN_LENGTH_UNIT_INCH <= unit <= MUSLIN_LENGTH_UNIT_M;
  @ predicate is_any_row(integer r) = // one by one, as the provers want to look at them
  @         r == 0 || r == 1 || r == 2 || r == 3 || r == 4 || r == 5 || r == 6 || r == 7 || r == 8 || r == 9 ||
  @         r == 10 || r == 11 || r == 12 || r == 13 || r == 14 || r == 15 || r == 16 || r == 17 || r == 18 ||
  @         r == 19 || r == 20 || r == 21 || r == 22 || r == 23 || r == 24;
  @ predicate spells(char *text, integer at, integer length, integer row) = unit_words[row].word[length] == 0 &&
  @         \forall integer i; 0 <= i < length ==> (text[at + i] | 0x20) == unit_words[row].word[i]; */

/* The unit of that row if these letters, in either case, spell its word; else 0. */
/*@ requires row < 25 && length < UNIT_WORD_MAX && at + length <= INT64_MAX;
  @ requires \valid_read(text + (at .. at + length - 1));
  @ assigns \nothing;
  @ ensures spells(text, at, length, row) ? \result == unit_words[row].unit : \result == 0;
  @ ensures \result != 0 ==> is_unit(\result); */
static int32_t unit_spelled(const char *text, size_t at, size_t length, size_t row)
{
    /*@ loop invariant 0 <= i <= length;
      @ loop invariant \forall integer k; 0 <= k < i ==> (text[at + k] | 0x20) == unit_words[row].word[k];
      @ loop assigns i;
      @ loop variant length - i; */
    for (size_t i = 0; i < length; i++)
        if ((text[at + i] | 0x20) != unit_words[row].word[i])
            return 0;
    /*@ assert is_any_row(row) && is_unit(unit_words[row].unit); */
    return unit_words[row].word[length] == 0 ? unit_words[row].unit : 0;
}

/* A unit in letters; 0 and a failure where the word is none. */
/*@ requires is_reading(reader);
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures is_reading(reader) && \old(reader->at) <= reader->at;
  @ ensures \result == 0 ? reader->status != MUSLIN_OK : is_unit(\result) && \exists integer row, length;
  @         0 <= row < 25 && spells(reader->text, \old(reader->at), length, row) && \result == unit_words[row].unit; */
static int32_t read_unit_word(struct reader *reader)
{
    size_t start = reader->at;
    /*@ loop invariant is_reading(reader) && \at(reader->at, Pre) <= reader->at;
      @ loop assigns reader->at, reader->under;
      @ loop variant reader->end - reader->at; */
    while (take(reader, KIND_LETTER))
        ;
    const size_t length = reader->at - start;
    /*@ loop invariant 0 <= i <= sizeof(unit_words) / sizeof(unit_words[0]);
      @ loop assigns i;
      @ loop variant 25 - i; */
    for (size_t i = 0; length < UNIT_WORD_MAX && i < sizeof unit_words / sizeof unit_words[0]; i++) {
        const int32_t unit = unit_spelled(reader->text, start, length, i);
        if (unit == 0)
            continue;
        if (unit_words[i].may_have_point)
            take(reader, KIND_POINT);
        return unit;
    }
    fail_at(reader, MUSLIN_ERR_TEXT_UNIT, start, length);
    return 0;
}

/* A mark for feet under the reader; the same one written twice means inches. */
/*@ requires is_reading(reader);
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures is_reading(reader) && \old(reader->at) <= reader->at;
  @ ensures \result == MUSLIN_LENGTH_UNIT_INCH || \result == MUSLIN_LENGTH_UNIT_FOOT; */
static int32_t read_foot_mark(struct reader *reader)
{
    uint32_t mark = reader->under.code;
    step(reader);
    if (reader->under.code != mark)
        return MUSLIN_LENGTH_UNIT_FOOT;
    step(reader);
    return MUSLIN_LENGTH_UNIT_INCH;
}

/* The unit under the reader; 0 where none is named. */
/*@ requires is_reading(reader);
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures is_reading(reader) && \old(reader->at) <= reader->at && (\result != 0 ==> is_unit(\result)); */
static int32_t read_unit(struct reader *reader)
{
    switch (reader->under.kind) {
    case KIND_LETTER:
        return read_unit_word(reader);
    case KIND_FOOT_MARK:
        return read_foot_mark(reader);
    case KIND_INCH_MARK:
        step(reader);
        return MUSLIN_LENGTH_UNIT_INCH;
    default:
        return 0;
    }
}

/* ---- the sum of the parts ---------------------------------------------------------------------------------------- */

/* *a gets `above` above its line, of which the whole ones are added to what it has. */
/*@ requires \valid(a) && 0 <= above && 0 < a->below && 0 <= a->whole && a->whole + above / a->below <= INT64_MAX;
  @ assigns a->whole, a->above;
  @ ensures a->whole == \old(a->whole) + above / a->below && 0 <= a->above < a->below; */
static void carry(struct exact *a, int64_t above)
{
    a->whole += above / a->below;
    a->above = above % a->below;
}

/* *a x ticks, in whole ticks and less than one more. Returns 0 where it passes the range. A unit has less than 2^19
 * ticks, so the two products of small numbers, which are nearly all, stay below 2^61 and need no wide one. */
/*@ requires \valid(a) && is_number(*a) && 0 < ticks < 0x80000;
  @ assigns *a;
  @ ensures \result == 0 || \result == 1;
  @ ensures \result == 1 ==> is_sum(*a); */
static int into_ticks(struct exact *a, int64_t ticks)
{
    const int64_t small = INT64_C(1) << 42;
    int64_t part;
    if (a->whole < small && a->above < small) {
        /*@ assert 0 <= a->above * ticks <= small * 0x80000 && 0 <= a->whole * ticks <= (small - 1) * 0x80000; */
        const int64_t product = a->above * ticks;
        /*@ assert 0 <= product / a->below <= product; */
        a->whole *= ticks;
        carry(a, product);
        return 1;
    }
    if (a->whole > MUSLIN_LENGTH_MAX / ticks)
        return 0;
    /*@ assert 0 <= a->whole * ticks <= MUSLIN_LENGTH_MAX; */
    a->whole *= ticks;
    /*@ assert 0 <= a->above * ticks; */
    if (!msl_wide_floor(msl_wide_multiply(a->above, ticks), a->below, &part, &a->above))
        return 0;
    if (part > MUSLIN_LENGTH_MAX - a->whole)
        return 0;
    a->whole += part;
    return 1;
}

/*@ requires \valid(a) && is_carried(*a);
  @ assigns a->above, a->below;
  @ ensures is_carried(*a) && a->below <= \old(a->below); */
static void into_lowest_terms(struct exact *a)
{
    int64_t divisor = msl_common_divisor(a->below, a->above);
    a->above /= divisor;
    a->below /= divisor;
}

/* *a + *b, both with a fraction of a tick, into *a. Returns 0 where the common denominator passes its range. */
/*@ requires \valid(a) && \valid(b) && \separated(a, b) && is_sum(*a) && is_sum(*b);
  @ assigns *a, b->above, b->below;
  @ ensures is_carried(*a);
  @ ensures is_sum(*b); */
static int add_fractions(struct exact *a, struct exact *b)
{
    into_lowest_terms(a);
    into_lowest_terms(b);
    int64_t divisor = msl_common_divisor(a->below, b->below);
    int64_t times = b->below / divisor;
    if (a->below > MUSLIN_LENGTH_MAX / times)
        return 0;
    int64_t share = a->below / divisor;
    /*@ assert share * divisor == a->below && times * divisor == b->below; */
    /*@ assert b->below * share == a->below * times; */
    /*@ assert 0 <= a->above * times < a->below * times && 0 <= b->above * share < b->below * share; */
    int64_t above = a->above * times + b->above * share;
    a->below *= times;
    /*@ assert 0 < a->below <= MUSLIN_LENGTH_MAX; */
    /*@ assert 0 <= above < 2 * a->below; */
    /*@ assert 0 <= above / a->below <= 1; */
    carry(a, above);
    return 1;
}

/* *a + *b into *a. Returns 0 where the common denominator, or the sum, passes its range. The first part, and most
 * others, have no fraction to be added to. */
/*@ requires \valid(a) && \valid(b) && \separated(a, b) && is_sum(*a) && is_sum(*b);
  @ assigns *a, b->above, b->below;
  @ ensures is_carried(*a);
  @ ensures \result != 0 ==> is_sum(*a); */
static int add_exact(struct exact *a, struct exact *b)
{
    if (a->above == 0) {
        a->above = b->above;
        a->below = b->below;
    } else if (!add_fractions(a, b)) {
        return 0;
    }
    if (b->whole > MUSLIN_LENGTH_MAX - a->whole)
        return 0;
    a->whole += b->whole;
    return 1;
}

struct parts {
    struct exact sum;
    int32_t default_unit;
    int32_t unit; /* of the last part, 0 before the first */
};

/*@ predicate are_parts(struct parts *p) = \valid(p) && is_sum(p->sum) && is_unit(p->default_unit) &&
  @         (p->unit != 0 ==> is_unit(p->unit));
  @ predicate falls(integer before, integer unit) = before == 0 || ticks_of(unit) < ticks_of(before); */

/* Units go from larger to smaller. */
/*@ requires \valid_read(parts);
  @ assigns \nothing;
  @ ensures \result != 0 <==> falls(parts->unit, unit); */
static int is_falling(const struct parts *parts, int32_t unit)
{
    return parts->unit == 0 || muslin_length_unit_ticks(unit) < muslin_length_unit_ticks(parts->unit);
}

/* One part: a number and, unless the text ends there, its unit. */
/*@ requires is_reading(reader) && begins_number(reader) && are_parts(parts) && \separated(reader, parts);
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes, parts->sum,
  @         parts->unit;
  @ ensures is_reading(reader) && \old(reader->at) < reader->at && is_carried(parts->sum);
  @ ensures reader->status == MUSLIN_OK ==>
  @         are_parts(parts) && is_unit(parts->unit) && falls(\old(parts->unit), parts->unit); */
static void read_part(struct reader *reader, struct parts *parts)
{
    struct exact number = { 0, 0, 1 };
    size_t start = reader->at;
    read_number(reader, &number);
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
    if (reader->status != MUSLIN_OK)
        return;
    /*@ assert is_reading(reader); */
    if (!into_ticks(&number, muslin_length_unit_ticks(unit)) || !add_exact(&parts->sum, &number))
        fail_at(reader, MUSLIN_ERR_OVERFLOW, start, end - start);
    parts->unit = unit;
    skip_blanks(reader);
}

/* The sign, if one stands here: 1 for minus. */
/*@ requires is_reading(reader);
  @ assigns reader->at, reader->under;
  @ ensures is_reading(reader) && (\result != 0 <==> \old(reader->under.kind) == KIND_MINUS); */
static int read_sign(struct reader *reader)
{
    return !take(reader, KIND_PLUS) && take(reader, KIND_MINUS);
}

/* No number stands where one must. */
/*@ requires is_reading(reader);
  @ assigns reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures is_reading(reader) && reader->status != MUSLIN_OK; */
static void refuse_no_number(struct reader *reader)
{
    refuse_other_sign(reader);
    fail_at(reader, reader->at == reader->end ? MUSLIN_ERR_TEXT_EMPTY : MUSLIN_ERR_TEXT_SYNTAX, reader->at,
            reader->under.bytes);
}

/*@ requires is_reading(reader) && reader->status == MUSLIN_OK && are_parts(parts) && \separated(reader, parts);
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes, parts->sum,
  @         parts->unit;
  @ ensures is_reading(reader) && is_carried(parts->sum);
  @ ensures reader->status == MUSLIN_OK ==> reader->at == reader->end && is_sum(parts->sum) && is_unit(parts->unit); */
static void read_parts(struct reader *reader, struct parts *parts)
{
    int more = starts_number(reader);
    if (!more)
        refuse_no_number(reader);
    /*@ loop invariant is_reading(reader) && is_carried(parts->sum);
      @ loop invariant more != 0 ==> begins_number(reader) && are_parts(parts);
      @ loop invariant more == 0 && reader->status == MUSLIN_OK ==> is_sum(parts->sum) && is_unit(parts->unit);
      @ loop assigns more, reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes,
      @         parts->sum, parts->unit;
      @ loop variant reader->end - reader->at; */
    while (more) {
        read_part(reader, parts);
        more = reader->status == MUSLIN_OK && starts_number(reader);
    }
    /*@ assert reader->at <= reader->end; */
    if (reader->at != reader->end)
        fail_at(reader, MUSLIN_ERR_TEXT_TRAILING, reader->at, reader->end - reader->at);
}

/* The sum with its sign, to the nearest tick, ties upwards. */
/*@ predicate is_nearest(integer value, integer above, integer below) =
  @         (2 * value - 1) * below <= 2 * above < (2 * value + 1) * below; */

/*@ requires \valid_read(parts) && is_carried(parts->sum);
  @ assigns \nothing;
  @ ensures minus == 0 ? is_nearest(\result.value - parts->sum.whole, parts->sum.above, parts->sum.below) :
  @                      is_nearest(\result.value + parts->sum.whole, -parts->sum.above, parts->sum.below);
  @ ensures \result.exact == (parts->sum.above == 0 ? 1 : 0) && \result.unit == parts->unit; */
static struct muslin_parsed rounded(const struct parts *parts, int minus)
{
    struct muslin_parsed result = { 0 };
    const struct exact *sum = &parts->sum;
    int64_t missing = sum->below - sum->above;
    int away = minus ? sum->above > missing : sum->above >= missing;
    int64_t nearest = sum->whole + (away ? 1 : 0);
    result.value = minus ? -nearest : nearest;
    result.exact = sum->above == 0;
    result.unit = parts->unit;
    return result;
}

muslin_status muslin_parse_spec_init(struct muslin_parse_spec *spec, uint32_t size)
{
    const struct muslin_parse_spec initial = MUSLIN_PARSE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/*@ requires \valid(check) && \valid(into) && (from == \null || \valid_read(from));
  @ requires \separated(check, into, check->problem);
  @ assigns check->status, *check->problem, *into;
  @ ensures check->status == MUSLIN_OK ==> is_unit(into->default_unit) &&
  @         (into->decimal_sign == KIND_POINT || into->decimal_sign == KIND_COMMA); */
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

/*@ predicate is_result(struct muslin_parsed p) = -MUSLIN_LENGTH_MAX <= p.value <= MUSLIN_LENGTH_MAX &&
  @         (p.exact == 0 || p.exact == 1) && is_unit(p.unit); */

/*@ requires has_text(reader) && reader->status == MUSLIN_OK;
  @ requires is_unit(default_unit);
  @ assigns reader->at, reader->under, reader->status, reader->wrong_at, reader->wrong_bytes;
  @ ensures has_text(reader);
  @ ensures reader->status == MUSLIN_OK ==> reader->at == reader->end && is_result(\result); */
static struct muslin_parsed read_text(struct reader *reader, int32_t default_unit)
{
    struct parts parts = { { 0, 0, 1 }, default_unit, 0 };
    move_to(reader, 0);
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

/* Whoever reads a text to its end has seen that it is UTF-8. One that is refused is looked at as a whole: what is not
 * UTF-8 is named before all else. */
/*@ requires has_text(reader) && reader->status != MUSLIN_OK && \valid(check) && \separated(reader, check);
  @ assigns reader->at, reader->under, check->at, check->status, *check->problem;
  @ ensures \result != MUSLIN_OK; */
static muslin_status refuse(struct msl_check *check, struct reader *reader)
{
    /*@ loop invariant is_reading(reader);
      @ loop assigns reader->at, reader->under, check->at;
      @ loop variant reader->end - reader->at; */
    for (move_to(reader, 0); reader->at < reader->end; step(reader)) {
        check->at = (int64_t)reader->at;
        if (reader->under.bytes == 0)
            return msl_fail_text(check, MUSLIN_ERR_TEXT_ENCODING, reader->text, 1);
    }
    check->at = (int64_t)reader->wrong_at;
    return msl_fail_text(check, reader->status, reader->text, (int64_t)reader->wrong_bytes);
}

/*@ requires bytes <= INT64_MAX && \valid_read(text + (0 .. bytes - 1));
  @ requires \valid(out) && (problem == \null || \valid(problem)) && (spec == \null || \valid_read(spec));
  @ requires \separated(out, problem);
  @ assigns *out, *problem;
  @ ensures \result == MUSLIN_OK ==> is_result(*out);
  @ ensures \result != MUSLIN_OK ==> out->size == \old(out->size) && out->flags == \old(out->flags) &&
  @         out->value == \old(out->value) && out->exact == \old(out->exact) && out->unit == \old(out->unit); */
muslin_status muslin_length_parse(const char *text, size_t bytes, const struct muslin_parse_spec *spec,
                                  struct muslin_parsed *out, struct muslin_problem *problem)
{
    struct muslin_parse_spec how;
    struct msl_check check = msl_check_start(problem);
    read_spec(&check, &how, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (bytes != 0)
        msl_want_pointer(&check, MUSLIN_ARG_TEXT, text);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct reader reader = { text, 0, bytes, { 0, KIND_END, 0 }, (enum kind)how.decimal_sign, MUSLIN_OK, 0, 0 };
    struct muslin_parsed result = read_text(&reader, how.default_unit);
    if (reader.status != MUSLIN_OK)
        return refuse(&check, &reader);
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}
