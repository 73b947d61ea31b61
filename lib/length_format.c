/* length_format.c - lengths written as text.
 *
 * SPDX-License-Identifier: MIT */
#include "inside.h"

enum { TEXT_MAX = 64, DECIMALS_MAX = 6, DENOMINATOR_MAX = 64 };

/* A length as a style shows it: whole units and part / parts of one more, part below parts. */
struct shown {
    int negative;
    int exact;
    uint64_t whole;
    int64_t part;
    int64_t parts;
};

/* NIST Handbook 44, Appendix C: 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in, all exact. */
muslin_len muslin_length_unit_ticks(int32_t unit)
{
    switch (unit) {
    case MUSLIN_LENGTH_UNIT_INCH:
        return MUSLIN_TICKS_PER_INCH;
    case MUSLIN_LENGTH_UNIT_FOOT:
        return 12 * MUSLIN_TICKS_PER_INCH;
    case MUSLIN_LENGTH_UNIT_YARD:
        return 36 * MUSLIN_TICKS_PER_INCH;
    case MUSLIN_LENGTH_UNIT_MM:
        return MUSLIN_TICKS_PER_MM;
    case MUSLIN_LENGTH_UNIT_CM:
        return 10 * MUSLIN_TICKS_PER_MM;
    case MUSLIN_LENGTH_UNIT_M:
        return 1000 * MUSLIN_TICKS_PER_MM;
    default:
        return 0;
    }
}

const char *muslin_length_unit_word(int32_t unit)
{
    switch (unit) {
    case MUSLIN_LENGTH_UNIT_INCH:
        return "in";
    case MUSLIN_LENGTH_UNIT_FOOT:
        return "ft";
    case MUSLIN_LENGTH_UNIT_YARD:
        return "yd";
    case MUSLIN_LENGTH_UNIT_MM:
        return "mm";
    case MUSLIN_LENGTH_UNIT_CM:
        return "cm";
    case MUSLIN_LENGTH_UNIT_M:
        return "m";
    default:
        return "";
    }
}

static int32_t unit_of_style(int32_t style)
{
    switch (style) {
    case MUSLIN_STYLE_YARD_FRACTION:
        return MUSLIN_LENGTH_UNIT_YARD;
    case MUSLIN_STYLE_MM:
        return MUSLIN_LENGTH_UNIT_MM;
    case MUSLIN_STYLE_CM:
        return MUSLIN_LENGTH_UNIT_CM;
    default:
        return MUSLIN_LENGTH_UNIT_INCH;
    }
}

static int is_fraction_style(int32_t style)
{
    return style == MUSLIN_STYLE_INCH_FRACTION || style == MUSLIN_STYLE_YARD_FRACTION;
}

static int64_t power_of_ten(int32_t exponent)
{
    int64_t power = 1;
    for (int32_t i = 0; i < exponent; i++)
        power *= 10;
    return power;
}

/* low and over / unit, 0 <= over < unit, to a whole number in the asked direction. */
static int64_t round_part(int64_t low, int64_t over, int64_t unit, int32_t direction)
{
    switch (direction) {
    case MUSLIN_DIRECTION_UP:
        return over == 0 ? low : low + 1;
    case MUSLIN_DIRECTION_DOWN:
        return low;
    default:
        return over >= unit - over ? low + 1 : low;
    }
}

/* Splits towards -infinity first, so that up and down mean what they say for negative lengths too, and takes the sign
 * out last. */
static void split(struct shown *shown, muslin_len a, const struct muslin_format_spec *spec)
{
    const int64_t unit = muslin_length_unit_ticks(unit_of_style(spec->style));
    const int64_t parts = is_fraction_style(spec->style) ? spec->denominator : power_of_ten(spec->decimals);
    const int below_whole = a % unit < 0;
    const int64_t product = (below_whole ? a % unit + unit : a % unit) * parts;
    int64_t whole = a / unit - below_whole;
    int64_t part = round_part(product / unit, product % unit, unit, spec->direction);
    if (part == parts) {
        part = 0;
        whole++;
    }
    const int borrows = whole < 0 && part != 0;
    shown->negative = whole < 0;
    shown->exact = product % unit == 0;
    shown->whole = (uint64_t)(whole < 0 ? -whole - borrows : whole);
    shown->part = borrows ? parts - part : part;
    shown->parts = parts;
}

static void put_decimals(struct msl_text *text, const struct shown *shown, int32_t decimal_sign)
{
    char sign[] = { (char)decimal_sign, 0 };
    int64_t part = shown->part;
    msl_put_unsigned(text, shown->whole);
    if (part != 0)
        msl_put(text, sign);
    for (int64_t place = shown->parts / 10; place != 0; place /= 10) {
        if (part == 0)
            return;
        msl_put_unsigned(text, (uint64_t)(part / place));
        part %= place;
    }
}

/* The fractions that Unicode gives a character of their own. */
static const struct vulgar {
    unsigned char above;
    unsigned char below;
    char character[4];
} vulgars[] = {
    { 1, 2, "\xC2\xBD" },     { 1, 4, "\xC2\xBC" },     { 3, 4, "\xC2\xBE" },     { 1, 3, "\xE2\x85\x93" },
    { 2, 3, "\xE2\x85\x94" }, { 1, 5, "\xE2\x85\x95" }, { 2, 5, "\xE2\x85\x96" }, { 3, 5, "\xE2\x85\x97" },
    { 4, 5, "\xE2\x85\x98" }, { 1, 6, "\xE2\x85\x99" }, { 5, 6, "\xE2\x85\x9A" }, { 1, 7, "\xE2\x85\x90" },
    { 1, 8, "\xE2\x85\x9B" }, { 3, 8, "\xE2\x85\x9C" }, { 5, 8, "\xE2\x85\x9D" }, { 7, 8, "\xE2\x85\x9E" },
    { 1, 9, "\xE2\x85\x91" }, { 1, 10, "\xE2\x85\x92" },
};

static const char *vulgar_of(int64_t above, int64_t below)
{
    for (size_t i = 0; i < sizeof vulgars / sizeof vulgars[0]; i++)
        if (vulgars[i].above == above && vulgars[i].below == below)
            return vulgars[i].character;
    return "";
}

/* Of a number and a larger power of two, as rulers have them, it is the number's lowest bit. */
static int64_t common_divisor(int64_t parts, int64_t part)
{
    const int64_t lowest_bit = part & -part;
    if (lowest_bit != 0 && (parts & (parts - 1)) == 0)
        return lowest_bit;
    return msl_common_divisor(parts, part);
}

static void put_fraction(struct msl_text *text, const struct shown *shown, int unicode)
{
    const int64_t divisor = common_divisor(shown->parts, shown->part);
    const int64_t above = shown->part / divisor;
    const int64_t below = shown->parts / divisor;
    const char *vulgar = unicode ? vulgar_of(above, below) : "";
    if (shown->whole != 0 || above == 0)
        msl_put_unsigned(text, shown->whole);
    if (above == 0)
        return;
    if (vulgar[0] != 0) {
        msl_put(text, vulgar);
        return;
    }
    msl_put(text, shown->whole != 0 ? " " : "");
    msl_put_unsigned(text, (uint64_t)above);
    msl_put(text, unicode ? "\xE2\x81\x84" : "/");
    msl_put_unsigned(text, (uint64_t)below);
}

static void put_shown(struct msl_text *text, const struct shown *shown, const struct muslin_format_spec *spec)
{
    int unicode = (spec->flags & MUSLIN_FORMAT_UNICODE) != 0;
    if (shown->negative)
        msl_put(text, unicode ? "\xE2\x88\x92" : "-");
    if (is_fraction_style(spec->style))
        put_fraction(text, shown, unicode);
    else
        put_decimals(text, shown, spec->decimal_sign);
    if ((spec->flags & MUSLIN_FORMAT_BARE) != 0)
        return;
    msl_put(text, " ");
    msl_put(text, muslin_length_unit_word(unit_of_style(spec->style)));
}

muslin_status muslin_format_spec_init(struct muslin_format_spec *spec, uint32_t size)
{
    const struct muslin_format_spec initial = MUSLIN_FORMAT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* Reads and checks the spec; the initial one where none is given. */
static void read_format(struct msl_check *check, struct muslin_format_spec *into, const struct muslin_format_spec *from)
{
    const struct muslin_format_spec initial = MUSLIN_FORMAT_SPEC_INIT;
    *into = initial;
    if (from == NULL)
        return;
    msl_read_struct(check, MUSLIN_ARG_SPEC, into, (uint32_t)sizeof *into, (uint32_t)sizeof *into,
                    MUSLIN_FORMAT_UNICODE | MUSLIN_FORMAT_BARE, from);
    if (check->status != MUSLIN_OK)
        return;
    msl_want_choice(check, MUSLIN_ARG_STYLE, into->style, MUSLIN_STYLE_INCH_FRACTION, MUSLIN_STYLE_CM);
    msl_want_between(check, MUSLIN_ARG_DENOMINATOR, into->denominator, 1, DENOMINATOR_MAX);
    msl_want_between(check, MUSLIN_ARG_DECIMALS, into->decimals, 0, DECIMALS_MAX);
    msl_want_decimal_sign(check, into->decimal_sign);
    msl_want_choice(check, MUSLIN_ARG_DIRECTION, into->direction, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    msl_want_pad(check, into->pad);
}

muslin_status muslin_length_format(muslin_len a, const struct muslin_format_spec *spec, char *buf, size_t cap,
                                   size_t *need, int32_t *exact, struct muslin_problem *problem)
{
    char local[TEXT_MAX] = { 0 };
    const int has_room = cap >= TEXT_MAX; /* for any length, so that it is written in its place */
    struct msl_text text = { has_room ? buf : local, TEXT_MAX, 0 };
    struct muslin_format_spec how;
    struct shown shown;
    struct msl_check check = msl_check_start(problem);
    read_format(&check, &how, spec);
    msl_want_between(&check, MUSLIN_ARG_LENGTH, a, -MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX);
    if (cap != 0)
        msl_want_pointer(&check, MUSLIN_ARG_BUFFER, buf);
    if (check.status != MUSLIN_OK)
        return check.status;
    split(&shown, a, &how);
    put_shown(&text, &shown, &how);
    msl_put_end(&text);
    if (need != NULL)
        *need = text.used + 1;
    if (cap != 0 && cap <= text.used)
        return msl_fail(&check, MUSLIN_ERR_BUFFER, MUSLIN_ARG_BUFFER, (int64_t)cap, (int64_t)text.used + 1);
    for (size_t i = 0; cap != 0 && !has_room && i <= text.used; i++)
        buf[i] = local[i];
    if (exact != NULL)
        *exact = shown.exact;
    return MUSLIN_OK;
}
